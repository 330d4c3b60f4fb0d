package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Quantity;
import org.junit.jupiter.api.Test;

/**
 * The wait before proving dead: the makers', three times the decay, at least 5 minutes, at least 10 where something is
 * unknown (rules of this program; guides name 5 and 10 minutes). The sound car needs 27.69 s down to 60 V (by hand).
 */
class WaitTest {
    private static final Term SIXTY = Known.exact("", "voltage limit", Quantity.of("60 V"), Basis.REQUIRED, "test");

    private static Wait wait(JobText job) {
        return job.car().waitFor(SIXTY);
    }

    @Test
    void theLongestWaitOfAMakerCounts() {
        var wait = wait(TractionText.sound().alter("parts", "inverter", "makers-wait: 5 min", "makers-wait: 7.5 min"));
        assertEquals(8, wait.minutes());
        assertEquals("the wait the maker of inverter states", wait.reason());
    }

    @Test
    void neverLessThanFiveMinutes() {
        var wait = wait(TractionText.sound()
                .alter("parts", "inverter", "makers-wait: 5 min", "makers-wait: 1 min")
                .alter("parts", "front-box", "makers-wait: 5 min", "makers-wait: 1 min")
                .alter("parts", "rear-box", "makers-wait: 5 min", "makers-wait: 1 min"));
        assertEquals(5, wait.minutes());
        assertEquals("the least this program prints", wait.reason());
    }

    /**
     * By hand, with 400 kΩ in place of 40 kΩ at the inverter: 1 + 2.5 + 2 + 2 + 5 µS make 80 kΩ; 80 kΩ · 533 µF · 1.8181
     * = 77.52 s; three times is 3.88 min, so that it takes 100 times as much capacitance to matter: 50 mF are 1.8 h.
     */
    @Test
    void threeTimesTheComputedDecayCounts() {
        var wait = wait(TractionText.sound().alter("parts", "inverter", "bleed: 40 kΩ", "bleed: 400 kΩ"));
        assertEquals(5, wait.minutes());
        // By hand: 5033 µF · 80 kΩ · 1.8181 · 3 = 2196.1 s = 36.60 min.
        var long37 = wait(TractionText.sound()
                .alter("parts", "inverter", "bleed: 40 kΩ", "bleed: 400 kΩ")
                .alter("parts", "inverter", "capacitance: 500 µF", "capacitance: 5000 µF"));
        assertEquals(37, long37.minutes());
        assertEquals(
                "three times the computed decay of junction-box + inverter + charger + converter + heater",
                long37.reason());
    }

    /** By hand: from 340 V to 60 V in 300 s; from 369.6 V 314.4 s, and three times that 15.7 min. */
    @Test
    void aDecayReadLongerThanComputedCounts() {
        var wait = wait(TractionText.sound().alter("readings.decay", "inverter", "time: 26.4 s", "time: 300 s"));
        assertEquals(16, wait.minutes());
        assertEquals("three times the decay by reading 1, at inverter", wait.reason());
    }

    /** Active discharge may fail, so that a decay it helped is no reason to wait less, or to know more. */
    @Test
    void aDecayHelpedOnIsNotCredited() {
        var wait = wait(TractionText.sound()
                .alter("readings.decay", "inverter", "time: 26.4 s", "time: 300 s")
                .alter("readings.decay", "inverter", "active: no", "active: yes"));
        assertEquals(5, wait.minutes());
    }

    @Test
    void whatIsUnknownMakesItTenMinutes() {
        var wait = wait(TractionText.sound().alter("parts", "heater", "capacitance: 2 µF, ", ""));
        assertEquals(10, wait.minutes());
        assertTrue(wait.reason().contains("capacitance of heater: not recorded"), wait.reason());
    }

    @Test
    void aCircuitNobodyRecordedMakesItTenMinutes() {
        var wait = wait(JobText.onTwoAxles());
        assertEquals(10, wait.minutes());
        assertTrue(wait.reason().contains("no bus is recorded"), wait.reason());
    }

    @Test
    void anUnknownCapacitanceDoesNotHideALongerReading() {
        var wait = wait(TractionText.sound()
                .alter("parts", "heater", "capacitance: 2 µF, ", "")
                .alter("readings.decay", "inverter", "time: 26.4 s", "time: 300 s"));
        assertEquals(16, wait.minutes());
    }

    /** "At least half an hour" is half an hour, and never nothing. */
    @Test
    void aMakersWaitWrittenAsABoundCounts() {
        var wait = wait(
                TractionText.sound().alter("parts", "inverter", "makers-wait: 5 min", "makers-wait: \"> 30 min\""));
        assertEquals(30, wait.minutes());
    }
}
