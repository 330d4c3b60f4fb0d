package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: 80 A of regeneration against 300 A. */
class ReverseBreakingTest {
    private final JobText job = TractionText.sound();

    private Found plus(String from, String to) {
        return job.alter("parts", "contactor-plus", from, to).found(new ReverseBreaking(), "contactor-plus");
    }

    @Test
    void aContactorThatOpensWhatRegenerationDrivesThroughItIsMet() {
        assertEquals(26.67, job.found(new ReverseBreaking(), "contactor-plus").value(), 0.005);
        assertEquals(Verdict.MET, plus("300 A", "80 A").verdict());
    }

    @Test
    void aContactorThatOpensLessIsNotMet() {
        assertEquals(Verdict.NOT_MET, plus("300 A", "60 A").verdict());
    }

    @Test
    void aContactorInDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, plus("300 A", "82 A ± 5 A").verdict());
    }

    @Test
    void theLargerOfRegenerationAndChargeCounts() {
        job.with("pack.currents", "{ from: settings, regeneration: 80 A, charge: 400 A }");
        assertEquals(
                Verdict.NOT_MET,
                job.found(new ReverseBreaking(), "contactor-plus").verdict());
    }

    @Test
    void withoutAPolarityBothWaysAreAlike() {
        assertEquals(8, plus("polarised: yes", "polarised: no").value(), 1e-9);
    }

    @Test
    void whatNobodyWroteIsNoEvidence() {
        assertEquals(
                List.of("parts[contactor-plus].contactor.polarised"),
                plus("polarised: yes, ", "").missing());
        job.with("pack.currents", "{ from: settings, charge: 18 A }");
        assertEquals(
                List.of("pack.currents.regeneration"),
                job.found(new ReverseBreaking(), "contactor-minus").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new ReverseBreaking());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
