package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Time from the highest working voltage down to 60 V; every value by hand from t = R·C·ln(U₀/60 V). */
class DecayTimeTest {
    private static Found time(JobText job) {
        return job.found(new DecayTime(), OneCapacitor.BUS);
    }

    /** By hand: 10 kΩ · 1 mF · ln(400/60) = 18.971 s; 47 kΩ · 500 µF · ln(360/60) = 42.106 s. */
    @Test
    void aBusDecaysThroughItsBleedResistance() {
        assertEquals(18.971, time(OneCapacitor.of("4 V", "1000 µF", "10 kΩ")).value(), 0.0005);
        assertEquals(42.106, time(OneCapacitor.of("3.6 V", "500 µF", "47 kΩ")).value(), 0.0005);
        assertEquals(
                Verdict.NO_LIMIT,
                time(OneCapacitor.of("4 V", "1000 µF", "10 kΩ")).verdict());
    }

    /** By hand: 533 µF together; 1/1000 + 1/40 + 1/500 + 1/500 + 1/200 per kΩ make 28.571 kΩ; ln(369.6/60) = 1.8181. */
    @Test
    void allPartsOfABusDischargeTogether() {
        assertEquals(28.571 * 0.533 * 1.8181, time(TractionText.sound()).value(), 0.002);
    }

    @Test
    void aBusThatIsTheSameWithContactorsOpenAndWeldedStandsThereOnce() {
        assertEquals(1, TractionText.sound().examined(new DecayTime()).rows().size());
    }

    @Test
    void aBusUnderTheLimitHasNoTimeToWait() {
        assertEquals(0, time(OneCapacitor.of("0.5 V", "1000 µF", "10 kΩ")).value(), 1e-9);
    }

    @Test
    void aCapacitanceNobodyRecordedLeavesTheWholeBusUnknown() {
        var found = time(TractionText.sound().alter("parts", "heater", "capacitance: 2 µF, ", ""));
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts[heater].electrical.capacitance"), found.missing());
    }

    @Test
    void aBleedNobodyRecordedLeavesTheWholeBusUnknown() {
        var found = time(TractionText.sound().alter("parts", "heater", ", bleed: 200 kΩ", ""));
        assertEquals(List.of("parts[heater].electrical.bleed"), found.missing());
    }

    /** What holds nothing needs no resistance to lose it. */
    @Test
    void aPartWithoutACapacitorMayLeaveItsBleedOut() {
        var job = OneCapacitor.of("4 V", "1000 µF", "10 kΩ").alter("parts", "heater", ", bleed: \"> 10 MΩ\"", "");
        assertEquals(18.971, time(job).value(), 0.0005);
    }

    @Test
    void aBusWithoutAnyBleedSaysThatNothingDischargesIt() {
        var found = time(OneCapacitor.of("4 V", "1000 µF", "\"> 10 MΩ\""));
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("nothing discharges it by itself"), found.why());
    }

    @Test
    void aBusWithoutAnyCapacitanceIsNoBusAndSaysSo() {
        var found = time(OneCapacitor.of("4 V", "0 µF", "10 kΩ"));
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("needs C > 0"), found.why());
    }

    /** Parts alone do not say which of them discharge together. */
    @Test
    void partsWithoutLinksAreNoBus() {
        assertEquals(
                List.of("links"),
                TractionText.sound().without("links").found(new DecayTime()).missing());
    }

    @Test
    void aCircuitNobodyRecordedIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new DecayTime());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
