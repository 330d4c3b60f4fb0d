package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/**
 * UN R100, annex 6: 1/(1/(95·U) - 1/R_i) up to, and not with, 1/(1/(100·U) - 1/R_i). At 400 V and 2 MΩ that is 38 736 to
 * 40 816 Ω; with 475 and 500 it is 209 945 to 222 222 Ω. By hand.
 */
class MonitorTestResistorTest {
    private static final String LARGE = "resistor large enough";
    private static final String SMALL = "resistor small enough";

    private static JobText tested(String joined, String isolation, String resistor) {
        return Confirmed.fourHundredVolts()
                .add(
                        "readings.isolation",
                        Confirmed.shown("tester", joined, "test-voltage: 500 V, pole: both, resistance: " + isolation))
                .with(
                        "readings.isolation-monitor",
                        "{ instrument: ohmmeter, date: 2026-09-30, by: A. Tester, resistor: " + resistor
                                + " ± 0.0001 kΩ, isolation: tester, warned: yes }");
    }

    private static Verdict direct(String resistor, String side) {
        return tested("front-box", "2 MΩ ± 0.00001 MΩ", resistor)
                .found(new MonitorTestResistor(), side)
                .verdict();
    }

    private static Verdict joined(String resistor, String side) {
        return tested("front-box, inverter", "2 MΩ ± 0.00001 MΩ", resistor)
                .found(new MonitorTestResistor(), side)
                .verdict();
    }

    @Test
    void aResistorInsideTheWindowIsMetOnBothSides() {
        assertEquals(Verdict.MET, direct("38.737", LARGE));
        assertEquals(Verdict.MET, direct("40.816", SMALL));
        assertEquals(Verdict.MET, joined("209.946", LARGE));
        assertEquals(Verdict.MET, joined("222.222", SMALL));
    }

    @Test
    void aResistorOutsideTheWindowIsNotMet() {
        assertEquals(Verdict.NOT_MET, direct("38.735", LARGE));
        assertEquals(Verdict.NOT_MET, direct("40.817", SMALL));
        assertEquals(Verdict.NOT_MET, joined("209.944", LARGE));
        assertEquals(Verdict.NOT_MET, joined("222.223", SMALL));
    }

    @Test
    void aResistorRoughlyKnownIsTooCloseToTell() {
        var rough = tested("front-box", "2 MΩ ± 0.4 MΩ", "38.737");
        assertEquals(
                Verdict.UNDECIDED, rough.found(new MonitorTestResistor(), LARGE).verdict());
    }

    /** Above 2 MΩ may be no leak at all: then 40 kΩ is the limit itself, and 40.5 kΩ shows nothing. */
    @Test
    void aLowerBoundOfTheIsolationNarrowsTheWindow() {
        var wide = tested("front-box", "\"> 2 MΩ\"", "40.5");
        assertEquals(
                Verdict.NOT_MET, wide.found(new MonitorTestResistor(), SMALL).verdict());
        var narrow = tested("front-box", "\"> 2 MΩ\"", "39.9");
        assertEquals(Verdict.MET, narrow.found(new MonitorTestResistor(), SMALL).verdict());
        assertEquals(Verdict.MET, narrow.found(new MonitorTestResistor(), LARGE).verdict());
    }

    @Test
    void isolationAlreadyBelowTheLimitIsSaid() {
        var low = tested("front-box", "0.030 MΩ", "39.0").found(new MonitorTestResistor(), LARGE);
        assertEquals(Verdict.NO_EVIDENCE, low.verdict());
        assertTrue(low.why().contains("already below the limit"), low.why());
    }

    @Test
    void aMonitorThatDidNotWarnIsNotMet() {
        var job = Confirmed.sound();
        assertEquals(
                Verdict.MET, job.found(new MonitorTestResistor(), "warning").verdict());
        job.with("readings.isolation-monitor", "{ by: A. Tester, date: 2026-09-30, warned: no }");
        assertEquals(
                Verdict.NOT_MET, job.found(new MonitorTestResistor(), "warning").verdict());
        job.with("readings.isolation-monitor", "{ date: 2026-09-30, warned: yes }");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                job.found(new MonitorTestResistor(), "warning").verdict());
    }

    @Test
    void aTestThatNamesNoIsolationReadingIsNoEvidence() {
        var job = Confirmed.sound().with("readings.isolation-monitor", "{ instrument: ohmmeter, resistor: 180.0 kΩ }");
        assertEquals(
                List.of("readings.isolation-monitor.isolation"),
                job.found(new MonitorTestResistor(), LARGE).missing());
        assertEquals(
                List.of("readings.isolation-monitor.warned"),
                job.found(new MonitorTestResistor(), "warning").missing());
    }

    @Test
    void aMonitorNobodyTestedIsNoEvidence() {
        var job = Confirmed.sound()
                .without("readings.isolation-monitor")
                .add("parts", "{ id: isolation-monitor, role: isolation-monitor, inside: front-box }");
        assertEquals(
                List.of("readings.isolation-monitor"),
                job.found(new MonitorTestResistor(), SMALL).missing());
    }

    /** UN R100 asks a monitor of fuel-cell cars alone (5.1.3.3, read second-hand). */
    @Test
    void aCarWithoutAMonitorIsNotAskedForOne() {
        var job = Confirmed.sound().without("readings.isolation-monitor");
        assertTrue(job.examined(new MonitorTestResistor()).rows().isEmpty());
        assertEquals(Optional.of(Gate.ENERGISE), new MonitorTestResistor().gate());
    }
}
