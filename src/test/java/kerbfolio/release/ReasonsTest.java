package kerbfolio.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.TractionText;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

class ReasonsTest {
    private static List<Reason> reasons(kerbfolio.JobText job, Gate gate) {
        return job.release().gates().stream()
                .filter(report -> report.gate() == gate)
                .findFirst()
                .orElseThrow()
                .reasons();
    }

    /** 0.2 V at 10 A is 20 mΩ; 1.5 V is 150 mΩ, over the 0.1 Ω of UN R100 5.1.2.2. */
    @Test
    void subjectsNotMetByOneQuestionAreOneReason() {
        var job = TractionText.sound()
                .alter("readings.bonding", "heater", "0.2 V", "1.5 V")
                .alter("readings.bonding", "inverter", "0.2 V", "1.5 V");
        List<Reason> bonding = reasons(job, Gate.ENERGISE).stream()
                .filter(reason -> reason.text().startsWith("bonding"))
                .toList();
        assertEquals(1, bonding.size(), bonding.toString());
        assertEquals("bonding, inverter, heater: not met", bonding.get(0).text());
        assertEquals(GateState.HELD, bonding.get(0).state());
        assertEquals(
                List.of("bonding/inverter", "bonding/heater"), bonding.get(0).findings());
    }

    @Test
    void limitsNobodyConfirmedAreOneReason() {
        List<Reason> weak = reasons(TractionText.sound().homeSet("un-ece"), Gate.ENERGISE).stream()
                .filter(reason -> reason.text().startsWith("limits not confirmed"))
                .toList();
        assertEquals(1, weak.size());
        assertEquals(GateState.NOT_EXAMINED, weak.get(0).state());
        assertTrue(
                weak.get(0).text().contains("resistance between a conductive part and the chassis"), weak.toString());
    }
}
