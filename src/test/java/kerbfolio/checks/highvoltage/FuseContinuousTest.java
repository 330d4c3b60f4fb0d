package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A load of 200 A without end asks for a fuse of 250 A that carries 80 % of its rating: common practice of fuse makers. */
class FuseContinuousTest {
    private final JobText job = TractionText.sound();

    private Found front(String amperes) {
        return job.with("pack.currents", "{ from: settings, drive-continuous: " + amperes + ", charge: 18 A }")
                .found(new FuseContinuous(), "front-fuse");
    }

    @Test
    void aFuseOfTwoHundredAndFiftyCarriesTwoHundred() {
        assertEquals(100, front("200 A").value(), 1e-9);
        assertEquals(Verdict.MET, front("200 A").verdict());
    }

    @Test
    void oneAmpereMoreIsNotMet() {
        assertEquals(Verdict.NOT_MET, front("201 A").verdict());
    }

    @Test
    void aCurrentInDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, front("199 A ± 5 A").verdict());
    }

    /** By hand: 15 A of 24 A; charger and converter together 18 A + 4 A of 24 A. */
    @Test
    void aBranchCarriesAllThatHangsOnIt() {
        assertEquals(62.5, job.found(new FuseContinuous(), "heater-fuse").value(), 1e-9);
        assertEquals(91.67, job.found(new FuseContinuous(), "aux-fuse").value(), 0.005);
    }

    @Test
    void stringsSideBySideShareIt() {
        assertEquals(
                45,
                TractionText.twoStrings()
                        .found(new FuseContinuous(), "rear-fuse")
                        .value(),
                1e-9);
    }

    @Test
    void whatNobodyWroteIsNotGuessed() {
        job.alter("parts", "heater", ", continuous-current: 15 A", "")
                .alter("parts", "heater-fuse", "derate: 80 %, ", "");
        assertEquals(
                List.of("parts[heater].electrical.continuous-current", "parts[heater-fuse].fuse.derate"),
                job.found(new FuseContinuous(), "heater-fuse").missing());
        assertEquals(
                Verdict.NO_EVIDENCE,
                job.alter("parts", "front-fuse", "80 %", "0 %")
                        .found(new FuseContinuous(), "front-fuse")
                        .verdict());
    }

    @Test
    void aFuseThatNoLoopPassesIsNoEvidence() {
        var found = job.drop("links", "c-heater-plus").found(new FuseContinuous(), "heater-fuse");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("no loop passes it"), found.why());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new FuseContinuous());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
