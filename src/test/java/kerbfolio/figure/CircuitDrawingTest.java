package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

class CircuitDrawingTest {
    private static Figure circuit(JobText job) {
        return Drawn.figure(job.dossier(), "circuit");
    }

    private static String plain(String words) {
        return words.replace('\u00a0', ' ');
    }

    /** A box, a fuse and an inverter. */
    static JobText three() {
        return JobText.onTwoAxles()
                .add("parts", "{ id: box, name: battery box, role: battery }")
                .add("parts", "{ id: f, name: main fuse, role: fuse, inside: box }")
                .add("parts", "{ id: inverter, role: inverter }")
                .add("links", "{ id: c1, kind: busbar, from: box/+, to: f/1 }")
                .add("links", "{ id: c2, kind: high-voltage, from: f/2, to: inverter/+, size: 50 mm² }")
                .add("links", "{ id: c3, kind: high-voltage, from: box/-, to: inverter/-, size: 50 mm² }");
    }

    /** The sound job and a dozen more consumers, each with its fuse, and four more boxes of cells beside each other. */
    static JobText many() {
        JobText job = TractionText.sound();
        IntStream.range(0, 12)
                .forEach(i -> job.add(
                                "parts",
                                "{ id: load" + i + ", name: additional consumer number " + i + ", role: heater }")
                        .add(
                                "parts",
                                "{ id: lf" + i + ", name: fuse of load " + i + ", role: fuse"
                                        + (i % 3 == 0 ? "" : ", inside: junction-box") + " }")
                        .add("links", "{ id: bl" + i + ", kind: busbar, from: junction-box/+, to: lf" + i + "/1 }")
                        .add(
                                "links",
                                "{ id: cable-to-load-" + i + "-plus, kind: high-voltage, from: lf" + i + "/2, to: load"
                                        + i + "/+ }")
                        .add(
                                "links",
                                "{ id: cable-to-load-" + i
                                        + "-minus, kind: high-voltage, from: junction-box/-, to: load" + i + "/- }"));
        IntStream.range(0, 4)
                .forEach(i -> job.add("parts", "{ id: box" + i + ", role: battery }")
                        .add(
                                "parts",
                                "{ id: sc" + i + ", name: side contactor " + i
                                        + ", role: contactor, poles: \"2\", inside: box" + i + " }")
                        .add("links", "{ id: s" + i + ", kind: busbar, from: box" + i + "/+, to: sc" + i + "/1 }")
                        .add("links", "{ id: t" + i + ", kind: busbar, from: box" + i + "/-, to: sc" + i + "/3 }")
                        .add(
                                "links",
                                "{ id: side-" + i + "-plus, kind: high-voltage, from: sc" + i
                                        + "/2, to: junction-box/+ }")
                        .add(
                                "links",
                                "{ id: side-" + i + "-minus, kind: high-voltage, from: sc" + i
                                        + "/4, to: junction-box/- }"));
        return job;
    }

    /** The cells, a joint box, the disconnect and contactors, and a junction box that feeds all but the charger. */
    static JobText twoJunctions() {
        JobText job = JobText.onTwoAxles()
                .add("parts", "{ id: front-box, role: battery }")
                .add("parts", "{ id: rear-box, name: battery box behind the seats, role: battery }")
                .add("parts", "{ id: ff, name: fuse of the front string, role: fuse, inside: front-box }")
                .add("parts", "{ id: joint, name: battery joint box, role: junction-box }")
                .add("parts", "{ id: off, name: service disconnect, role: disconnect }")
                .add("parts", "{ id: k-plus, name: plus contactor, role: contactor, inside: hub }")
                .add("parts", "{ id: k-minus, name: minus contactor, role: contactor, inside: hub }")
                .add("parts", "{ id: hub, name: high-voltage junction box, role: junction-box }")
                .add("parts", "{ id: cf, name: charger fuse, role: fuse, inside: joint }")
                .add("parts", "{ id: hf, name: heater fuse, role: fuse, inside: hub }")
                .add("parts", "{ id: charger, role: charger }")
                .add("parts", "{ id: inverter, role: inverter }")
                .add("parts", "{ id: heater, role: heater }")
                .add("links", "{ id: w-two-core, kind: high-voltage, from: hub, to: inverter, size: 50 mm² }");
        List.of(
                        "front-box/+ ff/1",
                        "ff/2 joint/+",
                        "front-box/- joint/-",
                        "rear-box/+ joint/+",
                        "rear-box/- joint/-",
                        "joint/+ off/1",
                        "off/2 k-plus/1",
                        "joint/- k-minus/1",
                        "k-plus/2 hub/+",
                        "k-minus/2 hub/-",
                        "hub/+ hf/1",
                        "hf/2 heater/+",
                        "hub/- heater/-",
                        "joint/+ cf/1",
                        "cf/2 charger/+",
                        "joint/- charger/-")
                .forEach(ends -> {
                    String[] end = ends.split(" ", 2);
                    job.add(
                            "links",
                            "{ id: w-" + ends.replaceAll("[/ ]", "-").replace("+", "p") + ", kind: high-voltage, from: "
                                    + end[0] + ", to: " + end[1] + ", size: 35 mm² }");
                });
        return job;
    }

    /** In the order of the current: cells, fuse, joint box, disconnect, contactor, junction box, its fuse, consumer. */
    @Test
    void eachJunctionIsABusInAColumnOfItsOwn() {
        Map<String, Stand> stands = new CircuitGrid(twoJunctions().car())
                .stands().stream()
                        .collect(Collectors.toMap(stand -> stand.part().id(), stand -> stand));
        List<String> order = List.of("front-box", "ff", "joint", "off", "k-plus", "hub", "hf", "heater");
        for (int i = 1; i < order.size(); i++) {
            assertTrue(
                    at(stands, order.get(i - 1)).right()
                            <= at(stands, order.get(i)).x(),
                    order.get(i));
        }
        assertTrue(at(stands, "charger").y() > at(stands, "hub").bottom());
    }

    @Test
    void framesDoNotOverlap() {
        for (JobText job : List.of(TractionText.sound(), three(), many(), twoJunctions())) {
            List<Frame> frames = new CircuitGrid(job.car()).frames();
            for (Frame one : frames) {
                for (Frame other : frames) {
                    assertFalse(
                            !one.equals(other) && one.overlaps(other),
                            one.part().id() + " " + other.part().id());
                }
            }
        }
    }

    @Test
    void everyWireEndsAtTheTerminalsItsCableNames() {
        JobText job = twoJunctions();
        var grid = new CircuitGrid(job.car());
        List<Wires.Wire> wires = new Wires(grid, job.car().circuit(), bond -> List.of(bond.id())).wires();
        assertEquals(18, wires.size());
        for (Wires.Wire wire : wires) {
            List<Stand.Point> points = wire.points();
            for (var end : Map.of(wire.bond().from(), points.get(0), wire.bond().to(), points.get(points.size() - 1))
                    .entrySet()) {
                assertTrue(
                        grid.stand(end.getKey().part())
                                .orElseThrow()
                                .ends(end.getKey())
                                .contains(end.getValue()),
                        wire.bond().id());
            }
        }
    }

    @Test
    void wordsLieOnNoOtherWordsAndInsideTheDrawing() {
        for (JobText job : List.of(TractionText.sound(), three(), twoJunctions())) {
            Figure figure = circuit(job);
            List<Drawn.Words> words = Drawn.of(figure).words();
            for (Drawn.Words one : words) {
                assertTrue(
                        one.room().getMinX() >= 0
                                && one.room().getMaxX() <= figure.width()
                                && one.room().getMaxY() <= figure.height(),
                        one.text());
                assertFalse(one.text().endsWith("\u2026"), one.text());
                for (Drawn.Words other : words) {
                    assertFalse(
                            !one.equals(other) && one.room().intersects(other.room()),
                            one.text() + " on " + other.text());
                }
            }
        }
    }

    @Test
    void aCableOfTwoCoresHasOneNameAndNumbersHaveNoGaps() {
        List<String> texts = Drawn.of(circuit(twoJunctions())).texts();
        assertEquals(
                1, texts.stream().filter(text -> text.startsWith("w-two-core")).count(), texts.toString());
        List<Integer> numbers = texts.stream()
                .filter(text -> text.matches("[0-9]+"))
                .map(Integer::valueOf)
                .sorted()
                .toList();
        assertEquals(IntStream.rangeClosed(1, numbers.size()).boxed().toList(), numbers);
    }

    /** 8 and 14 modules of 4 groups of 4.2 V: 134.4 V and 235.2 V, both above 60 V. */
    @Test
    void whatTheDisconnectLeavesIsSaidWithItsVoltage() {
        Figure figure = circuit(TractionText.sound());
        assertTrue(plain(figure.caption()).contains("front box (134.4 V), rear box (235.2 V)"), figure.caption());
        List<String> texts = Drawn.of(figure).texts();
        assertTrue(texts.contains("live 134.4 V") && texts.contains("live 235.2 V"), texts.toString());
        assertEquals(4, texts.stream().filter("live poles"::equals).count());
    }

    /** One module of 4.2 V · 4 is 16.8 V: under the voltage class, so not live. */
    @Test
    void aBoxUnderTheVoltageClassIsNotLive() {
        JobText job = TractionText.sound().alter("pack.boxes", "front-box", "\"8\"", "\"1\"");
        assertTrue(Drawn.of(circuit(job)).texts().contains("16.8 V"));
    }

    @Test
    void withoutAServiceDisconnectEverythingStays() {
        Figure figure = circuit(three());
        assertTrue(figure.caption().contains("as no service disconnect is recorded"), figure.caption());
        assertTrue(plain(figure.alternative()).contains("inverter, live"), figure.alternative());
    }

    @Test
    void everyPartAndEveryConductorHasItsName() {
        JobText job = TractionText.sound();
        List<String> texts = Drawn.of(circuit(job)).texts();
        for (String name :
                List.of("front fuse", "heater fuse", "inverter", "drive unit", "charge inlet", "junction box")) {
            assertTrue(texts.contains(name), name);
        }
        job.car()
                .circuit()
                .links()
                .forEach(link -> assertTrue(
                        texts.stream().anyMatch(text -> text.matches("(?:[0-9]+: )?+\\Q" + link.id() + "\\E.*+")),
                        link.id()));
    }

    @Test
    void theCircuitIsSaidInWordsWithSizesAndWhatIsLive() {
        String said = plain(circuit(TractionText.sound()).alternative());
        assertTrue(said.contains("c-plus 70 mm² from contactor-plus/2 to junction-box/+, live"), said);
        assertTrue(said.contains("front fuse in front-box"), said);
    }

    @Test
    void columnsRunFromTheCellsToTheConsumersAndThePlusIsAbove() {
        Map<String, Stand> stands = new CircuitGrid(TractionText.sound().car())
                .stands().stream()
                        .collect(Collectors.toMap(stand -> stand.part().id(), stand -> stand));
        List<String> order =
                List.of("front-box", "front-fuse", "contactor-plus", "junction-box", "heater-fuse", "heater");
        for (int i = 1; i < order.size(); i++) {
            assertTrue(
                    at(stands, order.get(i - 1)).right()
                            < at(stands, order.get(i)).x(),
                    order.get(i));
        }
        assertTrue(at(stands, "front-box").y() < at(stands, "disconnect").y());
        assertTrue(at(stands, "disconnect").y() < at(stands, "rear-box").y());
    }

    private static Stand at(Map<String, Stand> stands, String id) {
        return stands.getOrDefault(id, stands.values().iterator().next());
    }

    /** Two wires of different nets may cross and never share a stretch. */
    @Test
    void wiresOfDifferentNetsNeverRunOverEachOther() {
        for (JobText job : List.of(TractionText.sound(), three(), many(), twoJunctions())) {
            var circuit = job.car().circuit();
            List<Wires.Wire> wires = new Wires(new CircuitGrid(job.car()), circuit, bond -> List.of(bond.id())).wires();
            for (Wires.Wire one : wires) {
                for (Wires.Wire other : wires) {
                    for (int i = 1; one.net() != other.net() && i < one.points().size(); i++) {
                        Stand.Point from = one.points().get(i - 1);
                        Stand.Point to = one.points().get(i);
                        int at = other.points().indexOf(from);
                        boolean shares = at >= 0
                                && ((at > 0 && other.points().get(at - 1).equals(to))
                                        || (at + 1 < other.points().size()
                                                && other.points().get(at + 1).equals(to)));
                        assertFalse(
                                shares, one.bond().id() + " on " + other.bond().id());
                    }
                }
            }
        }
    }

    @Test
    void aCircuitTallerThanThePageIsDrawnSmallerAndSaysSo() {
        Figure figure = circuit(many());
        assertTrue(figure.height() <= 620);
        assertTrue(figure.caption().endsWith("Drawn smaller to fit the page."), figure.caption());
    }

    @Test
    void withoutLinksThereIsNoDrawing() {
        assertTrue(Figures.of(TractionText.sound().without("links").dossier()).stream()
                .noneMatch(figure -> figure.id().equals("circuit")));
    }
}
