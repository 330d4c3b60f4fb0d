package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A bus of 10 kΩ and 1 mF has a time constant of 10 s: from 340 V it is at 340/e² = 46.01 V after 20 s (by hand). */
class MeasuredDecayTest {
    private static Found read(String first, String second, String time, String active) {
        return OneCapacitor.of("4 V", "1000 µF", "10 kΩ")
                .without("readings.decay")
                .add(
                        "readings.decay",
                        "{ of: inverter, instrument: voltmeter, time-instrument: watch, date: 2026-09-30, by: A. Tester,"
                                + " first: { voltage: " + first + ", time: 0 s }, second: { voltage: " + second
                                + ", time: " + time + " }" + active + " }")
                .found(new MeasuredDecay());
    }

    private static Found read(String time) {
        return read("340.0 V", "46.0 V", time, ", active: no");
    }

    @Test
    void aDecayAsComputedAgrees() {
        assertEquals(Verdict.MET, read("20.0 s").verdict());
        assertTrue(read("20.0 s").value() < 0.1);
    }

    /** Three seconds more than the watch can be wrong: another 150 µF hang on the bus. */
    @Test
    void aCapacitorNobodyWroteDownShows() {
        assertEquals(Verdict.NOT_MET, read("23.0 s").verdict());
    }

    /** By hand: a watch of ± 0.5 s twice makes U = 2·√2·0.5/√3 = 0.816 s of 20 s; 19.2 s is inside and 18.9 s outside. */
    @Test
    void whatTheWatchAllowsDecides() {
        assertEquals(Verdict.MET, read("19.25 s").verdict());
        assertEquals(Verdict.NOT_MET, read("18.9 s").verdict());
    }

    @Test
    void aDecayHelpedOnIsNoDecay() {
        var found = read("340.0 V", "46.0 V", "20.0 s", ", active: yes");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("on purpose"), found.why());
    }

    @Test
    void aDecayOfWhichNobodySaysWhetherItWasHelpedIsNone() {
        var found = read("340.0 V", "46.0 V", "20.0 s", "");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("readings.decay[0].active"), found.missing());
    }

    @Test
    void aVoltageThatDoesNotFallIsNoDecay() {
        for (String second : List.of("340.0 V", "341.0 V", "0 V")) {
            var found = read("340.0 V", second, "20.0 s", ", active: no");
            assertEquals(Verdict.NO_EVIDENCE, found.verdict(), second);
            assertTrue(found.why().contains("needs U_"), found.why());
        }
    }

    @Test
    void timeThatRunsBackwardsIsNone() {
        assertEquals(Verdict.NO_EVIDENCE, read("0 s").verdict());
    }

    @Test
    void aPartOnNoBusIsNamed() {
        var found = OneCapacitor.of("4 V", "1000 µF", "10 kΩ")
                .alter("readings.decay", "inverter", "of: inverter", "of: drive-unit")
                .found(new MeasuredDecay());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("on no bus"), found.why());
    }

    @Test
    void withoutAReadingThereIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new MeasuredDecay());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("readings.decay"), found.missing());
        assertEquals(
                Verdict.NO_EVIDENCE,
                OneCapacitor.of("4 V", "1000 µF", "10 kΩ")
                        .alter("readings.decay", "inverter", "time-instrument: watch, ", "")
                        .found(new MeasuredDecay())
                        .verdict());
    }
}
