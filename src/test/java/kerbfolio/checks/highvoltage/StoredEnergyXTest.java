package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** UN R94, Annex 11: TE = Cx·Ub²/2. By hand: 500 µF at 60 V hold 0.900 J; 1 mF at 400 V 80.0 J; 500 µF at 360 V 32.4 J. */
class StoredEnergyXTest {
    private static double energy(JobText job, String at) {
        return job.found(new StoredEnergyX(), OneCapacitor.BUS + ", at the " + at)
                .value();
    }

    @Test
    void capacitorsHoldHalfTheSquareOfTheVoltage() {
        assertEquals(80.0, energy(OneCapacitor.of("4 V", "1000 µF", "10 kΩ"), "highest working voltage"), 1e-9);
        assertEquals(32.4, energy(OneCapacitor.of("3.6 V", "500 µF", "47 kΩ"), "highest working voltage"), 1e-9);
        assertEquals(0.900, energy(OneCapacitor.of("4 V", "500 µF", "10 kΩ"), "voltage limit"), 1e-9);
    }

    @Test
    void theEnergyIsPrintedAndNotJudged() {
        OneCapacitor.of("4 V", "500 µF", "10 kΩ")
                .examined(new StoredEnergyX())
                .rows()
                .forEach(row -> assertEquals(Verdict.NO_LIMIT, row.verdict()));
    }

    @Test
    void aCapacitanceNobodyRecordedIsNoEvidence() {
        assertEquals(
                List.of("links"),
                JobText.onTwoAxles().found(new StoredEnergyX()).missing());
        assertEquals(
                List.of("parts[heater].electrical.capacitance"),
                OneCapacitor.of("4 V", "500 µF", "10 kΩ")
                        .alter("parts", "heater", "capacitance: 0 µF, ", "")
                        .found(new StoredEnergyX(), OneCapacitor.BUS + ", at the voltage limit")
                        .missing());
    }
}
