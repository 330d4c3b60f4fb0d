package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** IEC 60204-1, 6.2.4: at most 5 s down to 60 V, or a label with the time to wait. By hand: 400 V and 1 mF need R ≤ 2635.6 Ω. */
class BusDischargeTest {
    private static final String LABEL =
            "{ on: inverter, shows: wait-time, minutes: 10 min, by: A. Tester, date: 2026-09-30 }";

    private static JobText bus(String bleed) {
        return OneCapacitor.of("4 V", "1000 µF", bleed);
    }

    private static Found found(JobText job) {
        return job.found(new BusDischarge(), OneCapacitor.BUS);
    }

    @Test
    void aBusDeadInFiveSecondsIsMet() {
        assertEquals(5, found(bus("2635.6 Ω")).value(), 0.0005);
        assertEquals(Verdict.MET, found(bus("2635 Ω")).verdict());
    }

    @Test
    void aBusThatOutlivesThemWithoutALabelIsNotMet() {
        assertEquals(Verdict.NOT_MET, found(bus("2637 Ω")).verdict());
        assertEquals(Verdict.NOT_MET, found(bus("10 kΩ")).verdict());
    }

    @Test
    void aBleedKnownRoughlyIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, found(bus("2635 Ω ± 5 %")).verdict());
    }

    @Test
    void aLabelAnswersForABusThatOutlivesThem() {
        var job = bus("10 kΩ").add("labels", LABEL);
        assertEquals(Verdict.MET, found(job).verdict());
        assertEquals(1, found(job).value(), 1e-9);
    }

    @Test
    void aLabelOnABusNobodyCanComputeClearsNothing() {
        var job = bus("10 kΩ").alter("parts", "inverter", ", bleed: 10 kΩ", "").add("labels", LABEL);
        assertEquals(Verdict.MET_UNCONFIRMED, found(job).verdict());
    }

    /** The wait printed is 5 minutes at least. */
    @Test
    void aLabelThatNamesTooShortAWaitIsNotMet() {
        var job = bus("10 kΩ").add("labels", LABEL.replace("10 min", "4 min"));
        assertEquals(Verdict.NOT_MET, found(job).verdict());
    }

    @Test
    void aLabelWithoutItsMinutesDoesNotClear() {
        var job = bus("10 kΩ").add("labels", LABEL.replace("minutes: 10 min, ", ""));
        assertEquals(Verdict.MET_UNCONFIRMED, found(job).verdict());
    }

    @Test
    void aLabelNobodyIsNamedForDoesNotClear() {
        var job = bus("10 kΩ").add("labels", "{ on: inverter, shows: wait-time }");
        assertEquals(Verdict.MET_UNCONFIRMED, found(job).verdict());
    }

    @Test
    void anotherLabelOrOneElsewhereIsNone() {
        assertEquals(
                Verdict.NOT_MET,
                found(bus("10 kΩ").add("labels", LABEL.replace("wait-time", "warning-symbol")))
                        .verdict());
        assertEquals(
                Verdict.NOT_MET,
                found(bus("10 kΩ").add("labels", LABEL.replace("inverter", "drive-unit")))
                        .verdict());
    }

    @Test
    void aVoltageLimitNobodyConfirmedMayHoldButNotClear() {
        var job = bus("2635 Ω").without("confirmations");
        assertEquals(Verdict.MET_UNCONFIRMED, found(job).verdict());
        assertEquals(
                Verdict.NOT_MET, found(bus("10 kΩ").without("confirmations")).verdict());
    }

    @Test
    void aCapacitanceNobodyRecordedIsNoEvidence() {
        var found = found(bus("2635 Ω").alter("parts", "heater", "capacitance: 0 µF, ", ""));
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts[heater].electrical.capacitance"), found.missing());
    }

    @Test
    void aCircuitNobodyRecordedIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new BusDischarge());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
