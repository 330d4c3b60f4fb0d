package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Expected values worked by hand: 1700 kg on the plate, axles of 814 and 786 kg, each ± 1 kg. */
class GrossMarginTest {
    private final JobText job = JobText.onTwoAxles();

    @Test
    void aCarBelowItsPlateIsMet() {
        var found = job.found(new GrossMargin());
        assertEquals(100, found.value(), 1e-9);
        assertEquals("kg", found.unit());
        // Two unrelated rectangles of ± 1 kg: 2·√(2·(1/√3)²) kg.
        assertEquals(1.633, found.reach(), 0.0005);
        assertEquals(Verdict.MET, found.verdict());
    }

    @Test
    void aCarAboveItsPlateIsNotMet() {
        assertEquals(
                Verdict.NOT_MET,
                job.with("vehicle.ratings.gross", "1598 kg")
                        .found(new GrossMargin())
                        .verdict());
    }

    @Test
    void aCarAsHeavyAsItsPlateIsTooCloseToTell() {
        assertEquals(
                Verdict.UNDECIDED,
                job.with("vehicle.ratings.gross", "1601 kg")
                        .found(new GrossMargin())
                        .verdict());
    }

    @Test
    void aCarNobodyWeighedIsNoEvidence() {
        var found = job.without("weighings.as-delivered").found(new GrossMargin());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(
                List.of("weighings.as-delivered.axles.front", "weighings.as-delivered.axles.rear"), found.missing());
    }

    @Test
    void aPlateNobodyReadIsNoEvidence() {
        var found = job.without("vehicle.ratings.gross").found(new GrossMargin());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.ratings.gross"), found.missing());
    }

    @Test
    void aPlateNobodyIsNamedForMayHoldButNotClear() {
        var found = job.without("vehicle.ratings.from").found(new GrossMargin());
        assertEquals(Verdict.MET_UNCONFIRMED, found.verdict());
        assertTrue(found.finding().reservations().toString().contains("nobody is named"));
    }

    @Test
    void oneWeighingOfTheWholeCarIsEnough() {
        var found = job.without("weighings.as-delivered.axles")
                .with("weighings.as-delivered.total", "1650 kg")
                .found(new GrossMargin());
        assertEquals(50, found.value(), 1e-9);
        assertEquals(Verdict.MET, found.verdict());
    }
}
