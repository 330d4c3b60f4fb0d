package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class CableProtectionTest {
    private final JobText job = TractionText.sound();

    /** Without both main fuses; the fuses of the branches stay. */
    private JobText withoutMainFuses() {
        return job.drop("links", "b2")
                .alter("links", "c-mid-rear", "rear-fuse/2", "rear-box/+")
                .drop("links", "b3")
                .alter("links", "b4", "front-fuse/2", "front-box/+")
                .alter("links", "b5", "front-fuse/2", "front-box/+");
    }

    @Test
    void everyCableOfASoundCarIsGuardedFromEachEndThatIsFed() {
        assertTrue(job.examined(new CableProtection()).rows().stream().allMatch(row -> row.verdict() == Verdict.MET));
        var plus = job.found(new CableProtection(), "c-plus at contactor-plus/2");
        assertEquals(2, plus.value(), 1e-9);
        assertEquals("guarded by front-fuse, rear-fuse", plus.why());
    }

    @Test
    void aCableNoFuseStandsBeforeIsFoundByName() {
        var found = withoutMainFuses().found(new CableProtection(), "c-plus at contactor-plus/2");
        assertEquals(Verdict.NOT_MET, found.verdict());
        assertTrue(found.why().contains("without a fuse"), found.why());
        assertEquals(
                Verdict.MET,
                job.found(new CableProtection(), "c-heater-plus at heater-fuse/2")
                        .verdict());
    }

    /** With one string unfused its current comes to the trunk though the other string has a fuse. */
    @Test
    void oneStringWithoutAFuseIsEnough() {
        var two =
                TractionText.twoStrings().drop("links", "b2").alter("links", "c-mid-rear", "rear-fuse/2", "rear-box/+");
        assertEquals(
                Verdict.NOT_MET,
                two.found(new CableProtection(), "c-plus at contactor-plus/2").verdict());
    }

    @Test
    void aCableNothingFeedsIsNoEvidence() {
        var found = job.drop("links", "b8").found(new CableProtection(), "c-heater-plus");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("no box of cells feeds it"), found.why());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new CableProtection());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
