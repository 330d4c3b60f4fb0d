package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Link;
import kerbfolio.job.Part;

/** The direct-current circuit from the cells to what they feed, with what may stay live marked. */
final class CircuitDrawing implements Figure {
    /** Room a letter takes, on the safe side [pt]. */
    static final double LETTER = 3.75;

    private static final double KEY = 24;
    private static final double LINE = 10;
    private static final int LEGENDS = 3;
    /** A caption names no more parts than this. */
    private static final int NAMED = 6;

    private final Circuit circuit;
    private final CircuitGrid grid;
    private final Wires wires;
    private final StillLive live;
    private final List<String> legend;

    private CircuitDrawing(Dossier dossier) {
        circuit = dossier.car().circuit();
        grid = new CircuitGrid(dossier.car());
        live = new StillLive(dossier);
        wires = new Wires(grid, circuit, this::names);
        legend = legend();
    }

    static Optional<CircuitDrawing> of(Dossier dossier) {
        return dossier.car().circuit().isRecorded() ? Optional.of(new CircuitDrawing(dossier)) : Optional.empty();
    }

    /** A cable by its id and size, or by its id where there is no room for both. */
    private List<String> names(Bond bond) {
        Link link = link(bond.id());
        return List.of(name(link), link.id());
    }

    private Link link(String id) {
        return circuit.links().stream()
                .filter(link -> link.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static String name(Link link) {
        return Words.joined(" ", link.id(), link.size() == null ? "" : link.size());
    }

    /** The cables of which the drawing does not show all, by number first. */
    private List<String> legend() {
        var keyed = new TreeMap<Integer, String>();
        var others = new ArrayList<String>();
        for (Link link : circuit.links()) {
            List<String> labels = wires.wires().stream()
                    .filter(wire -> wire.bond().id().equals(link.id()))
                    .flatMap(wire -> Stream.ofNullable(wire.label()).map(Ground.Label::words))
                    .toList();
            if (labels.stream().allMatch(words -> words.matches("[0-9]+") && !words.equals(link.id()))) {
                labels.forEach(number -> keyed.put(Integer.valueOf(number), number + ": " + name(link)));
                if (labels.isEmpty()) {
                    others.add(link.id() + ": "
                            + Words.joined(", ", link.size() == null ? "" : link.size(), "no room for a number"));
                }
            } else if (!labels.contains(name(link))) {
                others.add(link.id() + ": " + link.size());
            }
        }
        return Stream.concat(keyed.values().stream(), others.stream()).toList();
    }

    @Override
    public String id() {
        return "circuit";
    }

    @Override
    public String caption() {
        List<String> above = circuit.parts().stream()
                .filter(live::isLive)
                .map(part -> part.title() + voltage(part))
                .toList();
        return Words.sentences(
                "From the cells on the left to what they feed on the right, the higher voltage above.",
                above.isEmpty()
                        ? "With " + live.out()
                                + " and every contactor welded closed no part has voltage left between its poles."
                        : "With " + live.out()
                                + " and every contactor welded closed there stays voltage between the poles of "
                                + some(above) + ".",
                "Thick broken lines then still hang on a box of cells.",
                full() > Pen.TALLEST ? Pen.SHRUNK : "");
    }

    private static String some(List<String> names) {
        return names.size() <= NAMED
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, NAMED)) + " and " + (names.size() - NAMED) + " more";
    }

    private String voltage(Part part) {
        Value value = live.between(part);
        return value.isKnown() ? " (" + value.text() + ")" : "";
    }

    @Override
    public String alternative() {
        String parts = circuit.parts().stream()
                .map(part -> part.title()
                        + (part.inside() == null ? "" : " in " + part.inside())
                        + (live.word(part).isEmpty() ? "" : ", " + live.word(part)))
                .collect(Collectors.joining("; "));
        String cables = circuit.links().stream()
                .map(link -> name(link) + " from " + link.from() + " to " + link.to()
                        + (circuit.bonds(link.id()).stream().anyMatch(live::is) ? ", live" : ", not live"))
                .collect(Collectors.joining("; "));
        String beside = grid.partners().values().stream()
                .map(link -> " " + name(link) + " from " + link.from() + " to " + link.to() + ".")
                .collect(Collectors.joining());
        return "Circuit diagram, with " + live.out() + ". Parts: " + parts + ". Conductors: " + cables + "." + beside;
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return Math.min(Pen.TALLEST, full());
    }

    private double full() {
        return CircuitSheet.ROW * (grid.rows() + 1) + KEY + LINE * row(legend.size() + LEGENDS - 1);
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this, full());
        new CircuitSheet(pen, circuit, grid, wires, live).draw();
        key(pen);
    }

    private static int row(int index) {
        return index / LEGENDS;
    }

    private void key(Pen pen) {
        double y = full() - KEY - LINE * row(legend.size() + LEGENDS - 1) + 8;
        for (int i = 0; i < legend.size(); i++) {
            pen.left(
                    pen.fitted(legend.get(i), Pen.WIDTH / LEGENDS - 6, Type.SMALL),
                    Pen.WIDTH / LEGENDS * (i % LEGENDS),
                    y + LINE * row(i),
                    Type.SMALL);
        }
        y = full() - KEY + 8;
        pen.line(0, y - 2.5, 22, y - 2.5, Line.LIVE, Pen.INK);
        pen.left(
                "live: still hangs on a box of cells with " + pen.fitted(live.out(), 170, Type.NOTE)
                        + " and every contactor welded closed",
                26,
                y,
                Type.NOTE);
        pen.line(0, y + 7.5, 22, y + 7.5, Line.THIN, Pen.INK);
        pen.left(
                "on no box then; \"live\" with a voltage: that stays between the poles; \"live poles\": each on a box, no more between them",
                26,
                y + 10,
                Type.NOTE);
    }
}
