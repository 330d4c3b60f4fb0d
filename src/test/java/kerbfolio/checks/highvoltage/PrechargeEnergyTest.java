package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** 800 V on 1000 µF are 320.0 J, as a maker's calculator page gives them. */
class PrechargeEnergyTest {
    private static JobText job(String pulse) {
        return OneCapacitor.of("8 V", "1000 µF", "10 kΩ")
                .alter("parts", "precharge-resistor", "pulse-energy: 120 J", "pulse-energy: " + pulse);
    }

    private static Found use(String pulse) {
        return job(pulse).found(new PrechargeEnergy(), "precharge-resistor");
    }

    @Test
    void aResistorThatBearsTheEnergyIsMet() {
        assertEquals(100, use("320 J").value(), 1e-9);
        assertEquals(Verdict.MET, use("320 J").verdict());
        assertEquals(Verdict.MET, use("400 J").verdict());
    }

    @Test
    void aSmallerOneIsNotMet() {
        assertEquals(Verdict.NOT_MET, use("319 J").verdict());
    }

    @Test
    void aCapacitanceWithItsToleranceIsTooCloseToTell() {
        assertEquals(
                Verdict.UNDECIDED,
                job("325 J")
                        .alter("parts", "inverter", "capacitance: 1000 µF", "capacitance: 1000 µF ± 10 %")
                        .found(new PrechargeEnergy())
                        .verdict());
    }

    @Test
    void aResistorOfNoEnergyIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, use("0 J").verdict());
        assertTrue(use("0 J").why().contains("needs E_R > 0"));
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("pack.precharge.resistor"),
                JobText.onTwoAxles().found(new PrechargeEnergy()).missing());
        assertEquals(
                List.of("parts[precharge-resistor].electrical.pulse-energy"),
                job("320 J")
                        .alter("parts", "precharge-resistor", ", pulse-energy: 320 J", "")
                        .found(new PrechargeEnergy())
                        .missing());
    }
}
