package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The full pack has 369.6 V. */
class FuseVoltageTest {
    private final JobText job = TractionText.sound();

    private Found rated(String volts) {
        return job.alter("parts", "front-fuse", "dc-voltage: 500 V", volts).found(new FuseVoltage(), "front-fuse");
    }

    @Test
    void aFuseForMoreThanTheFullPackIsMet() {
        assertEquals(73.92, job.found(new FuseVoltage(), "front-fuse").value(), 1e-9);
        assertEquals(Verdict.MET, rated("dc-voltage: 369.6 V").verdict());
    }

    @Test
    void aFuseForLessIsNotMetAndNobodyWaivesIt() {
        assertEquals(Verdict.NOT_MET, rated("dc-voltage: 369 V").verdict());
        assertFalse(new FuseVoltage().isWaivable());
    }

    @Test
    void aRatingInDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, rated("dc-voltage: 370 V ± 2 V").verdict());
    }

    /** An alternating rating says nothing of a direct voltage (Formula SAE 2014, EV6.1.2: the rating is the direct one). */
    @Test
    void anAlternatingRatingIsNoEvidence() {
        var found = rated("ac-voltage: 690 V");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals("rated direct voltage of front fuse: only an alternating rating is recorded, 690 V", found.why());
    }

    @Test
    void aRatingNobodyWroteOrOfNothingIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, rated("dc-voltage: 0 V").verdict());
        var bare = TractionText.sound().alter("parts", "front-fuse", "dc-voltage: 500 V, ", "");
        assertEquals(
                List.of("parts[front-fuse].fuse.dc-voltage"),
                bare.found(new FuseVoltage(), "front-fuse").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new FuseVoltage());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
