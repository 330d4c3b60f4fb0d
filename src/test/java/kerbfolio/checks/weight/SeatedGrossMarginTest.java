package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The car of 1600 kg on a plate of 1700 kg, with somebody in each seat. */
class SeatedGrossMarginTest {
    private final JobText job = JobText.onTwoAxles();

    private Found seated(String gross) {
        return job.with("vehicle.ratings.gross", gross).found(new SeatedGrossMargin());
    }

    /** 75 kg: Regulation (EU) No 1230/2012, Annex I Part A, 2.6.2.1. */
    @Test
    void inEuropeAnOccupantIsSeventyFiveKilograms() {
        job.with("vehicle.seats", "\"4\"");
        assertEquals(2000 - 1600 - 4 * 75, seated("2000 kg").value(), 1e-9);
        assertEquals(Verdict.MET, seated("2000 kg").verdict());
    }

    /** 68 kg (150 lb): 49 CFR 571.110 S3, as an interpretation letter quotes it. */
    @Test
    void inTheUnitedStatesAnOccupantIsSixtyEightKilograms() {
        job.with("vehicle.seats", "\"4\"").homeSet("us-federal");
        assertEquals(2000 - 1600 - 4 * 68, seated("2000 kg").value(), 1e-9);
        assertEquals(Verdict.MET_UNCONFIRMED, seated("2000 kg").verdict());
    }

    @Test
    void aFullCarAboveItsPlateIsNotMetThoughTheEmptyOneIs() {
        job.with("vehicle.seats", "\"2\"");
        assertEquals(Verdict.NOT_MET, seated("1700 kg").verdict());
        assertEquals(Verdict.MET, job.found(new GrossMargin()).verdict());
    }

    @Test
    void aFullCarAsHeavyAsItsPlateIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, seated("1675 kg").verdict());
    }

    @Test
    void seatsNobodyCountedAreNoEvidence() {
        var found = job.without("vehicle.seats").found(new SeatedGrossMargin());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.seats"), found.missing());
    }

    @Test
    void aCountNobodyStandsForDoesNotClear() {
        var found = job.without("job.prepared-by").found(new SeatedGrossMargin());
        assertEquals(Verdict.MET_UNCONFIRMED, found.verdict());
        assertTrue(found.finding().reservations().toString().contains("seats"));
    }
}
