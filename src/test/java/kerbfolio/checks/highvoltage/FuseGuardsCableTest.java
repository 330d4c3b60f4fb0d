package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A fuse of 250 A asks for a cable of 250 A, whatever the load: a cable of 240 A fails though it carries 200 A (worked by hand). */
class FuseGuardsCableTest {
    private static Found plus(JobText job, String amperes) {
        return job.alter("links", "c-plus", "330 A, ampacity-at: 40 °C", amperes + ", ampacity-at: 60 °C")
                .found(new FuseGuardsCable(), "c-plus");
    }

    @Test
    void aCableOfItsFuseIsMet() {
        assertEquals(Verdict.MET, plus(TractionText.sound(), "250 A").verdict());
    }

    @Test
    void aCableBelowItsFuseIsNotMetThoughItCarriesItsLoad() {
        var job = TractionText.sound().with("pack.currents", "{ from: settings, drive-continuous: 200 A }");
        var found = plus(job, "240 A");
        assertEquals(Verdict.NOT_MET, found.verdict());
        assertEquals(104.17, found.value(), 0.005);
        assertEquals(Verdict.MET, job.found(new CableAmpacity(), "c-plus").verdict());
    }

    @Test
    void aCableInDoubtIsUndecided() {
        assertEquals(
                Verdict.UNDECIDED, plus(TractionText.sound(), "250 A ± 10 A").verdict());
    }

    /** 60 A at 40 °C are 54.3 A at 60 °C; its own fuse of 30 A counts, not the 250 A before it. */
    @Test
    void ofFusesInARowTheSmallestCounts() {
        assertEquals(
                55.3,
                TractionText.sound()
                        .found(new FuseGuardsCable(), "c-heater-plus")
                        .value(),
                0.05);
        assertEquals(
                55.3,
                TractionText.sound()
                        .found(new FuseGuardsCable(), "c-heater-minus")
                        .value(),
                0.05);
    }

    /** Two strings of 250 A each feed 500 A. */
    @Test
    void fusesOfStringsSideBySideAddUp() {
        assertEquals(200, plus(TractionText.twoStrings(), "250 A").value(), 1e-9);
    }

    @Test
    void aCableWithoutAFuseIsNoEvidenceAndSaysSo() {
        var found = TractionText.sound()
                .drop("links", "b2")
                .alter("links", "c-mid-rear", "rear-fuse/2", "rear-box/+")
                .drop("links", "b3")
                .alter("links", "b4", "front-fuse/2", "front-box/+")
                .alter("links", "b5", "front-fuse/2", "front-box/+")
                .found(new FuseGuardsCable(), "c-plus");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("no fuse stands between it and front-box"), found.why());
    }

    @Test
    void aRatingNobodyWroteIsNoEvidence() {
        var job = TractionText.sound()
                .alter("parts", "front-fuse", "current: 250 A, ", "")
                .alter("parts", "rear-fuse", "current: 250 A, ", "");
        assertEquals(
                List.of("parts[front-fuse].fuse.current"),
                job.found(new FuseGuardsCable(), "c-plus").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new FuseGuardsCable());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
