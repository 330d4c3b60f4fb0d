package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Expected values worked by hand: 850 and 900 kg permitted, 814 and 786 kg measured with ± 1 kg. */
class AxleMarginTest {
    private static final String FRONT = "front axle, as delivered";
    private static final String REAR = "rear axle, as delivered";

    private final JobText job = JobText.onTwoAxles();

    private Found front(String mass) {
        return job.with("weighings.as-delivered.axles.front", mass).found(new AxleMargin(), FRONT);
    }

    @Test
    void anAxleBelowItsPlateIsMet() {
        assertEquals(36, front("814 kg").value(), 1e-9);
        assertEquals(Verdict.MET, front("814 kg").verdict());
        assertEquals(114, job.found(new AxleMargin(), REAR).value(), 1e-9);
    }

    @Test
    void anAxleAboveItsPlateIsNotMetThoughTheTotalIs() {
        assertEquals(Verdict.NOT_MET, front("852 kg").verdict());
        assertEquals(Verdict.MET, job.found(new GrossMargin()).verdict());
    }

    @Test
    void anAxleWithinTheErrorOfTheScalesIsTooCloseToTell() {
        // ± 1 kg is 2/√3 = 1.155 kg at k = 2.
        assertEquals(Verdict.MET, front("848.8 kg").verdict());
        assertEquals(Verdict.UNDECIDED, front("848.9 kg").verdict());
        assertEquals(Verdict.UNDECIDED, front("851.1 kg").verdict());
        assertEquals(Verdict.NOT_MET, front("851.2 kg").verdict());
    }

    @Test
    void anUntakenReadingIsNeverAPass() {
        var found = job.without("weighings.as-delivered.axles.front").found(new AxleMargin(), FRONT);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("weighings.as-delivered.axles.front"), found.missing());
        assertEquals(Verdict.MET, job.found(new AxleMargin(), REAR).verdict());
    }

    @Test
    void aReadingWithNoInstrumentIsNoEvidence() {
        var found = job.without("weighings.as-delivered.instrument").found(new AxleMargin(), FRONT);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("no instrument"), found.why());
    }

    @Test
    void aBoundIsNoReading() {
        assertEquals(Verdict.NO_EVIDENCE, front("\"> 500 kg\"").verdict());
        assertEquals(Verdict.NO_EVIDENCE, front("\"< 500 kg\"").verdict());
    }

    @Test
    void scalesOutOfCalibrationMayHoldButNotClear() {
        job.with("weighings.as-delivered.date", "2027-01-02");
        assertEquals(Verdict.MET_UNCONFIRMED, front("814 kg").verdict());
        // Their error counts three times: 848.8 kg was decided above.
        assertEquals(3 * 2 / Math.sqrt(3), front("848.8 kg").reach(), 1e-9);
        assertEquals(Verdict.UNDECIDED, front("848.8 kg").verdict());
        assertEquals(Verdict.NOT_MET, front("860 kg").verdict());
    }

    @Test
    void anAxleIsTheSumOfItsWheels() {
        var found = JobText.onFourCorners().found(new AxleMargin(), FRONT);
        assertEquals(850 - 420 - 394, found.value(), 1e-9);
    }
}
