package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.car.Evidence;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FaultWithstandTest {
    /** 120 A for 0.4 s at k 115 need 0.66 mm², 328 A 1.80 mm² (a wiring-regulations forum); 2500 A for 0.1 s 6.9 mm². */
    @ParameterizedTest
    @CsvSource({
        "120, 0.4, 115, 0.66, 0.005",
        "328, 0.4, 115, 1.80, 0.005",
        "2500, 0.1, 115, 6.9, 0.05",
        "8000, 0.799, 143, 50, 0.05"
    })
    void theCrossSectionNeededIsThePublishedOne(double amperes, double seconds, double k, double square, double half) {
        Working use = Working.fill(FaultWithstand.USE)
                .put("I_p", Evidence.solved("", "current", amperes, "A", ""))
                .put("t", Evidence.solved("", "time", seconds, "s", ""))
                .put("k", Evidence.solved("", "factor", k, "A·s^0.5/mm²", ""))
                .put("S", Evidence.solved("", "cross-section", 1, "mm²", ""))
                .work();
        assertEquals(square, Found.value(use) / 100, half);
    }

    private final JobText job = TractionText.sound().confirming("tables", "fault-temperature");

    private Found heater(String melted) {
        for (String fuse : List.of("front-fuse", "rear-fuse", "heater-fuse")) {
            job.alter("parts", fuse, "time: 1 ms", "time: " + melted);
        }
        job.alter("parts", "heater-fuse", "current: 700 A", "current: 120 A");
        return job.found(new FaultWithstand(), "c-heater-plus");
    }

    /** By hand: 6872 A and 4 ms need 434.6 A·s^0.5, 6 mm² from 150 °C to 250 °C withstand 652; 12 ms need 752.8. */
    @Test
    void aCableSurvivesUntilItsFuseHasMelted() {
        assertEquals(100 * 434.6 / 652.0, heater("4 ms").value(), 0.1);
        assertEquals(
                Verdict.MET, job.found(new FaultWithstand(), "c-heater-plus").verdict());
    }

    @Test
    void orItDoesNot() {
        assertEquals(Verdict.NOT_MET, heater("12 ms").verdict());
    }

    /** By hand: 6872 A for 1 ms need 217 A·s^0.5, but 700 A for 2 s need 989.9, and the cable withstands 652. */
    @Test
    void aSmallerCurrentThatFlowsLongerMayHeatMore() {
        var found = job.found(new FaultWithstand(), "c-heater-plus");
        assertEquals(100 * 989.9 / 652.0, found.value(), 0.1);
        assertEquals(Verdict.NOT_MET, found.verdict());
    }

    @Test
    void aPackInDoubtIsUndecided() {
        job.with(
                "pack.module",
                "{ from: maker, cell-groups: \"4\", resistance: 2.4 mΩ ± 0.3 mΩ, resistance-kind: ohmic }");
        assertEquals(Verdict.UNDECIDED, heater("9.3 ms").verdict());
    }

    /** The adiabatic rule holds for at most 5 s (IEC 60364-5-54). */
    @Test
    void aFuseThatTakesLongerIsNoEvidence() {
        var found = heater("6 s");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("t <= 5"), found.why());
    }

    @Test
    void withoutACurveThereIsNoEvidence() {
        for (String fuse : List.of("front-fuse", "rear-fuse")) {
            job.alter("parts", fuse, ", curve: [ { current: 700 A, time: 2 s }, { current: 6000 A, time: 1 ms } ]", "");
        }
        var found = job.found(new FaultWithstand(), "c-plus");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts[front-fuse].fuse.curve"), found.missing());
    }

    @Test
    void aTableNobodyConfirmedHoldsAndDoesNotClear() {
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                TractionText.sound().found(new FaultWithstand(), "c-plus").verdict());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new FaultWithstand());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
