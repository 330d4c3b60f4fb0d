package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.formula.Term;
import kerbfolio.job.Part;
import org.junit.jupiter.api.Test;

/** Voltages by hand: 8 and 14 modules of 4 groups in series at 4.2 V are 134.4 V and 235.2 V, together 369.6 V. */
class LivePartsTest {
    private static Part part(Car car, String id) {
        return car.circuit().part(id).orElseThrow();
    }

    private static Term poles(JobText job, String part, String... open) {
        Car car = job.car();
        return car.liveParts(List.of(open)).betweenPoles(part(car, part));
    }

    @Test
    void aDisconnectBetweenTheBoxesLeavesNothingBetweenThePolesOfAConsumer() {
        for (String consumer : List.of("inverter", "charger", "converter", "heater", "junction-box")) {
            assertEquals(0, Found.value(poles(TractionText.sound(), consumer, "disconnect")), consumer);
            assertEquals(369.6, Found.value(poles(TractionText.sound(), consumer)), 1e-9, consumer);
        }
    }

    @Test
    void theSocketOfAnOpenDisconnectCarriesTheWholePackThroughWhateverConducts() {
        Car car = TractionText.sound().car();
        Term gap = car.liveParts(List.of("disconnect")).betweenTerminals(part(car, "disconnect"));
        assertEquals(369.6, Found.value(gap), 1e-9);
        assertTrue(gap.name().endsWith("by front-box and rear-box"), gap.name());
    }

    @Test
    void eachHalfOfThePackStaysLiveWithWhatHangsOnIt() {
        Car car = TractionText.sound().car();
        List<LiveParts.Half> halves = car.liveParts(List.of("disconnect")).halves();
        assertEquals(
                List.of(List.of("front-box"), List.of("rear-box")),
                halves.stream()
                        .map(half -> half.boxes().stream().map(Part::id).toList())
                        .toList());
        assertEquals(134.4, Found.value(halves.get(0).volts()), 1e-9);
        assertEquals(235.2, Found.value(halves.get(1).volts()), 1e-9);
        assertTrue(halves.get(0).touching().contains(part(car, "inverter")), "one pole of the inverter");
        assertTrue(halves.get(1).touching().contains(part(car, "inverter")), "and its other pole");
        assertTrue(!halves.get(1).touching().contains(part(car, "front-fuse")), "the fuse of the other box");
        List<LiveParts.Half> whole = car.liveParts(List.of()).halves();
        assertEquals(1, whole.size());
        assertEquals(369.6, Found.value(whole.get(0).volts()), 1e-9);
    }

    @Test
    void whatIsWiredPastTheDisconnectStaysLive() {
        JobText job = TractionText.sound()
                .drop("links", "c-charger-minus")
                .add("links", "{ id: astray, kind: high-voltage, from: charger/-, to: front-box/- }");
        assertEquals(134.4, Found.value(poles(job, "charger", "disconnect")), 1e-9);
        assertEquals(0, Found.value(poles(job, "inverter", "disconnect")), "its poles hang on two boxes");
    }

    @Test
    void aBoxOfUnknownVoltageLeavesNoFigureWhereItMatters() {
        JobText job = TractionText.sound().drop("pack.boxes", "rear-box");
        assertEquals(List.of("pack.boxes"), paths(poles(job, "inverter")));
        JobText island = job.drop("links", "c-heater-plus");
        assertEquals(0, Found.value(poles(island, "heater", "disconnect")), "nothing joins its poles");
    }

    private static List<String> paths(Term term) {
        return term.missing().stream().map(absent -> absent.path()).toList();
    }

    @Test
    void boxesInAShortCircuitHaveNoVoltageAnybodyCouldName() {
        JobText job =
                TractionText.sound().add("links", "{ id: wrong, kind: busbar, from: rear-box/+, to: front-box/+ }");
        Term term = poles(job, "inverter");
        assertTrue(term.amount().isEmpty());
        assertTrue(term.origin().contains("at different voltages"), term.origin());
    }

    @Test
    void aDoubtfulCellVoltageLeavesDoubt() {
        JobText job = TractionText.sound();
        job.with("pack.cell", "{ from: maker, max-voltage: 4.20 V ± 0.05 V }");
        // 88 groups · 0.05 V as a rectangular distribution, k = 2: 88 · 0.05 / √3 · 2 (JCGM 100:2008, 4.3.7).
        assertEquals(88 * 0.05 / Math.sqrt(3) * 2, Found.reach(poles(job, "inverter")), 1e-9);
    }
}
