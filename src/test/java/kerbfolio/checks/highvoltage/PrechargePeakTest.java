package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** 800 V on 47 Ω are 17.0 A, as a maker's calculator page gives them (17.0213 A by hand). */
class PrechargePeakTest {
    private static JobText job(String peak) {
        return OneCapacitor.of("8 V", "1000 µF", "10 kΩ")
                .alter("parts", "precharge-resistor", "resistance: 100 Ω", "resistance: 47 Ω")
                .alter("parts", "precharge-contactor", ", peak-current: 400 A", peak);
    }

    private static double use(String peak) {
        return job(peak).found(new PrechargePeak(), "precharge-contactor").value();
    }

    @Test
    void theContactorIsTheOneThatLetsTheResistorFillTheBus() {
        assertEquals(
                List.of("precharge-contactor"),
                job("").examined(new PrechargePeak()).rows().stream()
                        .map(row -> row.finding().subject())
                        .toList());
    }

    @Test
    void aContactorThatBearsThePeakIsMet() {
        assertEquals(17.0213 / 0.2, use(", peak-current: 20 A"), 0.001);
        assertEquals(
                Verdict.MET,
                job(", peak-current: 17.1 A").found(new PrechargePeak()).verdict());
    }

    @Test
    void aSmallerOneIsNotMet() {
        assertEquals(
                Verdict.NOT_MET,
                job(", peak-current: 17 A").found(new PrechargePeak()).verdict());
    }

    /** By hand: 17.0213 A over the 250 A it carries without end. */
    @Test
    void withoutAPeakWhatItCarriesWithoutEndCounts() {
        assertEquals(17.0213 / 2.5, use(""), 0.001);
    }

    @Test
    void aResistorKnownRoughlyIsTooCloseToTell() {
        assertEquals(
                Verdict.UNDECIDED,
                job(", peak-current: 17 A")
                        .alter("parts", "precharge-resistor", "resistance: 47 Ω", "resistance: 47 Ω ± 5 %")
                        .found(new PrechargePeak())
                        .verdict());
    }

    /** The resistor may as well sit before the contactor. */
    @Test
    void theOrderOfResistorAndContactorDoesNotMatter() {
        var job = job(", peak-current: 20 A")
                .drop("links", "b5")
                .drop("links", "b7")
                .add("links", "{ id: b5, kind: busbar, from: front-fuse/2, to: precharge-resistor/2 }")
                .add("links", "{ id: b7, kind: busbar, from: precharge-contactor/1, to: contactor-plus/2 }");
        assertEquals(
                17.0213 / 0.2,
                job.found(new PrechargePeak(), "precharge-contactor").value(),
                0.001);
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new PrechargePeak());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals("contactor of the pre-charge", found.finding().subject());
    }
}
