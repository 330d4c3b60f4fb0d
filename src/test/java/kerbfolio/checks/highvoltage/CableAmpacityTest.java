package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: 330 A at 40 °C are 298.5 A at 60 °C for a conductor of 150 °C; 180 A use 60.3 % of them. */
class CableAmpacityTest {
    private final JobText job = TractionText.sound();

    private Found plus(JobText job) {
        return job.found(new CableAmpacity(), "c-plus");
    }

    @Test
    void aCableThatCarriesTheDriveIsMet() {
        assertEquals(60.3, plus(job).value(), 0.05);
        assertEquals(Verdict.MET, plus(job).verdict());
    }

    @Test
    void aCableTooThinForItsAmbientIsNotMet() {
        assertEquals(
                Verdict.NOT_MET,
                plus(job.alter("links", "c-plus", "330 A", "190 A")).verdict());
    }

    @Test
    void whatLiesWithinTheDoubtOfTheRatingIsUndecided() {
        assertEquals(
                Verdict.UNDECIDED,
                plus(job.alter("links", "c-plus", "330 A", "199 A ± 5 A")).verdict());
    }

    @Test
    void aBranchIsNotAskedForTheCurrentOfTheDrive() {
        assertEquals(
                List.of("c-minus", "c-mid-rear", "c-mid-front", "c-plus", "c-inverter"),
                job.examined(new CableAmpacity()).rows().stream()
                        .map(row -> row.finding().subject())
                        .toList());
    }

    /** 180 A over two strings are 90 A: 30.15 % of 298.5 A; behind the point where they meet all 180 A flow. */
    @Test
    void twoStringsShareTheCurrentAndTheTrunkDoesNot() {
        var two = TractionText.twoStrings();
        assertEquals(30.15, two.found(new CableAmpacity(), "c-mid-rear").value(), 0.01);
        assertEquals(60.3, plus(two).value(), 0.05);
    }

    @Test
    void anAmbientAtTheLimitOfTheCableIsNoEvidenceAndNoNumber() {
        var found = plus(job.alter("links", "c-plus", "ambient: 60 °C", "ambient: 150 °C"));
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("needs T_amb < T_max"), found.why());
    }

    @Test
    void aTableHoldsAndDoesNotClear() {
        job.confirming("tables", "conductor-ampacity")
                .alter("links", "c-plus", "ampacity: 330 A, ampacity-at: 40 °C, ", "");
        assertEquals(Verdict.MET_UNCONFIRMED, plus(job).verdict());
        assertEquals(
                Verdict.NOT_MET,
                plus(job.alter("links", "c-plus", "70 mm²", "10 mm²")).verdict());
    }

    @Test
    void aRatingOfNothingIsNoEvidence() {
        assertEquals(
                Verdict.NO_EVIDENCE,
                plus(job.alter("links", "c-plus", "330 A", "0 A")).verdict());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new CableAmpacity());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
