package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** k²S² of 16 mm²: 3.386e6 A²s in PVC, 5.235e6 A²s cross-linked; worked by hand from k 115 and 143 (IEC 60364-5-54). */
class FuseLetThroughTest {
    private static Found heater(String insulation, String limit, String letThrough) {
        var job = TractionText.sound()
                .confirming("tables", "fault-temperature")
                .alter("links", "c-heater-plus", "6 mm²", "16 mm²")
                .alter("links", "c-heater-plus", "silicone", insulation)
                .alter("links", "c-heater-plus", "150 °C", limit);
        for (String fuse : List.of("front-fuse", "rear-fuse", "heater-fuse")) {
            job.alter("parts", fuse, "40000 A²·s", letThrough);
        }
        return job.found(new FuseLetThrough(), "c-heater-plus");
    }

    @Test
    void aCableThatSwallowsIt() {
        assertEquals(100, heater("pvc", "70 °C", "3386000 A²·s").value(), 0.4);
        assertEquals(100, heater("xlpe", "90 °C", "5235000 A²·s").value(), 0.4);
        assertEquals(Verdict.MET, heater("xlpe", "90 °C", "5000000 A²·s").verdict());
    }

    @Test
    void aCableThatDoesNot() {
        assertEquals(Verdict.NOT_MET, heater("pvc", "70 °C", "5000000 A²·s").verdict());
    }

    @Test
    void aLetThroughInDoubtIsUndecided() {
        assertEquals(
                Verdict.UNDECIDED,
                heater("pvc", "70 °C", "3386000 A²·s ± 100000 A²·s").verdict());
    }

    /** A conductor that runs at 149 °C has less left than one at 90 °C: k 109.3 instead of 143, worked by hand. */
    @Test
    void aHotterConductorTakesLess() {
        assertEquals(100, heater("xlpe", "149 °C", "3056000 A²·s").value(), 0.5);
    }

    /** Of three fuses in a row the one that lets least through opens first; two strings let four times as much through. */
    @Test
    void fusesInARowHelpAndSideBySideTheyAddUp() {
        double one = TractionText.sound().found(new FuseLetThrough(), "c-plus").value();
        assertEquals(
                4 * one,
                TractionText.twoStrings().found(new FuseLetThrough(), "c-plus").value(),
                1e-9);
    }

    @Test
    void aTableNobodyConfirmedHoldsAndDoesNotClear() {
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                TractionText.sound().found(new FuseLetThrough(), "c-plus").verdict());
    }

    @Test
    void whatNobodyWroteIsNoEvidence() {
        var job = TractionText.sound()
                .alter("links", "c-plus", "size: 70 mm², ", "")
                .alter("links", "c-plus", "insulation: silicone, ", "");
        assertEquals(
                List.of("links[c-plus].insulation", "links[c-plus].size"),
                job.found(new FuseLetThrough(), "c-plus").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new FuseLetThrough());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
