package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: a fuse that breaks from 600 A on and a contactor that opens 1000 A leave no gap; one that opens 500 A does. */
class ContactorFuseTest {
    private final JobText job = TractionText.sound();

    private Found plus(String opens) {
        return job.alter("parts", "contactor-plus", "1000 A", opens).found(new ContactorFuse(), "contactor-plus");
    }

    @Test
    void aContactorThatOpensMoreThanTheFuseNeedsIsMet() {
        assertEquals(60, job.found(new ContactorFuse(), "contactor-plus").value(), 1e-9);
        assertEquals(Verdict.MET, plus("600 A").verdict());
    }

    @Test
    void aGapBetweenTheTwoIsNotMet() {
        assertEquals(Verdict.NOT_MET, plus("500 A").verdict());
    }

    @Test
    void aGapWithinDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, plus("610 A ± 50 A").verdict());
    }

    @Test
    void ofFusesInARowTheOneThatBreaksLeastIsEnough() {
        job.alter("parts", "rear-fuse", "600 A", "300 A");
        assertEquals(30, job.found(new ContactorFuse(), "contactor-plus").value(), 1e-9);
    }

    /** Behind the point where two strings meet the contactor sees twice what each fuse does. */
    @Test
    void aTrunkOfTwoStringsHasTwiceTheGap() {
        assertEquals(
                120,
                TractionText.twoStrings()
                        .found(new ContactorFuse(), "contactor-plus")
                        .value(),
                1e-9);
    }

    @Test
    void theContactorOfThePreChargeHasNoFaultToOpen() {
        assertEquals(2, job.examined(new ContactorFuse()).rows().size());
    }

    @Test
    void whatNobodyWroteIsNoEvidence() {
        job.alter("parts", "contactor-plus", "breaking-current: 1000 A, ", "");
        assertEquals(
                List.of("parts[contactor-plus].contactor.breaking-current"),
                job.found(new ContactorFuse(), "contactor-plus").missing());
        for (String fuse : List.of("front-fuse", "rear-fuse")) {
            job.alter("parts", fuse, "minimum-breaking: 600 A, ", "");
        }
        assertEquals(
                List.of("parts[front-fuse].fuse.minimum-breaking"),
                job.found(new ContactorFuse(), "contactor-minus").missing());
    }

    @Test
    void aContactorThatOpensNothingIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, plus("0 A").verdict());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new ContactorFuse());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
