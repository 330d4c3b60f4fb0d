package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.formula.Working;
import org.junit.jupiter.api.Test;

class ProspectiveCurrentTest {
    /** 12 V behind 5 mΩ give 2400 A: a published worked example of a battery maker. */
    @Test
    void aTwelveVoltBatteryOfFiveMilliohms() {
        Working current = JobText.blank()
                .with("pack.modules", "\"1\"")
                .with("pack.strings", "\"1\"")
                .with("pack.cell", "{ from: maker, max-voltage: 12 V }")
                .with("pack.module", "{ from: maker, cell-groups: \"1\", resistance: 5 mΩ, resistance-kind: ohmic }")
                .car()
                .prospectiveCurrent();
        assertEquals(2.4, Found.value(current), 1e-9);
        assertEquals(List.of(), current.reservations());
    }

    /** 400 V behind 60 mΩ and 2.32 mΩ of cable give 6.42 kA, worked by hand. */
    @Test
    void cablesBetweenBoxesLieInTheWay() {
        Working current = Working.fill(ProspectiveCurrent.CURRENT)
                .put("U_max", Evidence.solved("", "voltage", 400, "V", ""))
                .put("R_p", Evidence.solved("", "pack", 60, "mΩ", ""))
                .each("R_s", List.of(Evidence.solved("", "cable", 2.32, "mΩ", "")))
                .work();
        assertEquals(6.42, Found.value(current), 0.005);
    }

    /** By hand: 369.6 V over 22 × 2.4 mΩ + (1 + 3) m/(58 × 70 mm²) = 53.785 mΩ. */
    @Test
    void onlyWhatEveryFaultPassesIsCounted() {
        Working current = TractionText.sound().car().prospectiveCurrent();
        assertEquals(6.8718, Found.value(current), 5e-5);
        assertEquals(
                List.of("least resistance of c-mid-rear", "least resistance of c-mid-front"),
                current.inputs().get("R_s").stream().map(term -> term.name()).toList());
    }

    /** 369.6/0.0528 = 7.0 kA: a cable nobody measured is taken as none. */
    @Test
    void whatIsNotKnownIsLeftOut() {
        var job = TractionText.sound()
                .alter("links", "c-mid-rear", "length: 1 m, ", "")
                .alter("links", "c-mid-front", "size: 70 mm², ", "");
        assertEquals(7.0, Found.value(job.car().prospectiveCurrent()), 1e-9);
    }

    /** Two strings of 11 modules: half the voltage, a quarter of the resistance, and no cable that every fault passes. */
    @Test
    void stringsSideBySideFeedAFaultTogether() {
        assertEquals(184.8 / 13.2, Found.value(TractionText.twoStrings().car().prospectiveCurrent()), 1e-9);
    }

    @Test
    void aPulseResistanceMayHoldAndNotClear() {
        var pulse = TractionText.sound()
                .with("pack.module", "{ from: maker, cell-groups: \"4\", resistance: 2.4 mΩ, resistance-kind: pulse }");
        assertFalse(pulse.car().prospectiveCurrent().reservations().isEmpty());
        var none = TractionText.sound().with("pack.module", "{ from: maker, cell-groups: \"4\" }");
        assertTrue(none.car().prospectiveCurrent().amount().isEmpty());
        var zero = TractionText.sound()
                .with("pack.module", "{ from: maker, cell-groups: \"4\", resistance: 0 mΩ, resistance-kind: ohmic }");
        assertTrue(zero.car().prospectiveCurrent().amount().isEmpty());
    }
}
