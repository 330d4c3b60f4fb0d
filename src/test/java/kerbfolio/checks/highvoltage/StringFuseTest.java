package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class StringFuseTest {
    private static Verdict of(JobText job, String box) {
        return job.found(new StringFuse(), box).verdict();
    }

    private static JobText withoutRearFuse(JobText job) {
        return job.drop("links", "b2").alter("links", "c-mid-rear", "rear-fuse/2", "rear-box/+");
    }

    @Test
    void eachSideOfASplitPackHasAFuseOfItsOwn() {
        assertEquals(Verdict.MET, of(TractionText.sound(), "front-box"));
        assertEquals(Verdict.MET, of(TractionText.sound(), "rear-box"));
        assertEquals(
                "rear-fuse",
                TractionText.sound().found(new StringFuse(), "rear-box").why());
    }

    @Test
    void theSideWithoutOneIsFoundByName() {
        var job = withoutRearFuse(TractionText.sound());
        assertEquals(Verdict.MET, of(job, "front-box"));
        assertEquals(Verdict.NOT_MET, of(job, "rear-box"));
    }

    @Test
    void eachStringHasAFuseOfItsOwn() {
        assertEquals(Verdict.MET, of(TractionText.twoStrings(), "rear-box"));
        assertEquals(Verdict.NOT_MET, of(withoutRearFuse(TractionText.twoStrings()), "rear-box"));
    }

    @Test
    void withoutLinksNothingIsKnownOfFuses() {
        var found = JobText.blank().add("parts", "{ id: box, role: battery }").found(new StringFuse(), "box");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new StringFuse());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
