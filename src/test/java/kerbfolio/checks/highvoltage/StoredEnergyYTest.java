package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/**
 * UN R94, Annex 11: TEy = Cy·U²/2. By hand: 1 µF at 200 V holds 0.020 J, 1.5 µF at 400 V 0.12 J, and 0.2 J are reached at
 * 2.5 µF and 400 V. The limit of 0.2 J is ISO 6469-3, from memory.
 */
class StoredEnergyYTest {
    /** The sound car has 0.01 + 0.2 + 0.05 + 0.05 + 0.01 µF; the inverter is given the rest. */
    private static JobText job(String cell, String rest) {
        return OneCapacitor.of(cell, "500 µF", "10 kΩ")
                .alter("parts", "inverter", "y-capacitance: 0.2 µF", "y-capacitance: " + rest)
                .confirming("house", "stored-energy-y");
    }

    private static Found energy(String cell, String rest) {
        return job(cell, rest).found(new StoredEnergyY(), OneCapacitor.BUS);
    }

    @Test
    void allCapacitorsOfARailCountTogether() {
        assertEquals(0.020, energy("2 V", "0.88 µF").value(), 1e-9);
        assertEquals(0.12, energy("4 V", "1.38 µF").value(), 1e-9);
    }

    @Test
    void aTenthOfAJouleTwiceIsTheMost() {
        assertEquals(Verdict.MET, energy("4 V", "2.38 µF").verdict());
        assertEquals(Verdict.NOT_MET, energy("4 V", "2.39 µF").verdict());
    }

    @Test
    void aCapacitanceWithItsToleranceIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, energy("4 V", "2.3 µF ± 20 %").verdict());
    }

    @Test
    void aFigureFromMemoryDoesNotClear() {
        var job = job("4 V", "1 µF").without("confirmations");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                job.found(new StoredEnergyY(), OneCapacitor.BUS).verdict());
    }

    /** By hand: a box with 1.0 µF beside 1.5 µF makes the 2.5 µF of 0.2 J; 0.01 µF more is too much. */
    @Test
    void aBoxCountsWhereSomebodyRecordedWhatItHas() {
        var job = job("4 V", "1.39 µF")
                .alter("parts", "front-box", "makers-wait: 5 min", "y-capacitance: 1 µF, makers-wait: 5 min");
        assertEquals(0.2008, job.found(new StoredEnergyY(), OneCapacitor.BUS).value(), 1e-9);
    }

    @Test
    void aCapacitanceNobodyRecordedIsNoEvidence() {
        assertEquals(
                List.of("links"),
                JobText.onTwoAxles().found(new StoredEnergyY()).missing());
        var found = job("4 V", "1 µF")
                .alter("parts", "heater", "y-capacitance: 0.01 µF, ", "")
                .found(new StoredEnergyY(), OneCapacitor.BUS);
        assertEquals(List.of("parts[heater].electrical.y-capacitance"), found.missing());
    }
}
