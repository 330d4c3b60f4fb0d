package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: 369.6 V over 53.785 mΩ give 6.872 kA; a flat fuse breaks 2 kA, one for traction 10 to 50 kA (a fuse supplier). */
class FuseBreakingTest {
    private final JobText job = TractionText.sound();

    private Found breaking(String capacity) {
        return job.alter("parts", "front-fuse", "20 kA", capacity).found(new FuseBreaking(), "front-fuse");
    }

    @Test
    void aFuseWithTwentyKiloamperesIsMet() {
        assertEquals(34.36, job.found(new FuseBreaking(), "front-fuse").value(), 0.005);
        assertEquals(Verdict.MET, breaking("10 kA").verdict());
    }

    @Test
    void aFuseThatBreaksLessIsNotMetAndNobodyWaivesIt() {
        assertEquals(Verdict.NOT_MET, breaking("6 kA").verdict());
        assertFalse(new FuseBreaking().isWaivable());
    }

    /** 6.872 kA of 7 kA are 98 %: within 10 % only a test proves it (rule of this program, no outside source). */
    @Test
    void nearItsLimitAFuseIsNotClearedByArithmetic() {
        var found = breaking("7 kA");
        assertEquals(Verdict.MET_UNCONFIRMED, found.verdict());
        assertTrue(found.finding().reservations().toString().contains("only a test proves"));
        assertEquals(
                Verdict.MET,
                TractionText.sound()
                        .alter("parts", "front-fuse", "20 kA", "7.7 kA")
                        .found(new FuseBreaking(), "front-fuse")
                        .verdict());
    }

    @Test
    void aCapacityInDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, breaking("7 kA ± 1 kA").verdict());
    }

    @Test
    void aPulseResistanceHoldsAndDoesNotClear() {
        job.with("pack.module", "{ from: maker, cell-groups: \"4\", resistance: 2.4 mΩ, resistance-kind: pulse }");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                job.found(new FuseBreaking(), "front-fuse").verdict());
        assertEquals(Verdict.NOT_MET, breaking("6 kA").verdict());
    }

    @Test
    void aCapacityOrAResistanceNobodyWroteIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, breaking("0 kA").verdict());
        job.with("pack.module", "{ from: maker, cell-groups: \"4\" }")
                .alter("parts", "rear-fuse", "breaking-capacity: 20 kA, ", "");
        assertEquals(
                List.of("pack.module.resistance", "parts[rear-fuse].fuse.breaking-capacity"),
                job.found(new FuseBreaking(), "rear-fuse").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new FuseBreaking());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
