package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Examination;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Load index 91 stands for 615 kg on one tyre (UN R30, section 2; the same in eight public tables). */
class TyreLoadTest {
    private static final String FRONT = "front axle, as delivered";

    private final JobText job = JobText.onTwoAxles();

    private Found front(String mass) {
        return job.with("weighings.as-delivered.axles.front", mass).found(new TyreLoad(), FRONT);
    }

    @Test
    void twoTyresOfIndexNinetyOneCarryTwelveHundredAndThirtyKilograms() {
        assertEquals(100, front("1230 kg").value(), 1e-9);
        assertEquals("%", front("1230 kg").unit());
    }

    @Test
    void anAxleItsTyresCarryIsMet() {
        assertEquals(Verdict.MET, front("1228 kg").verdict());
    }

    @Test
    void anAxleItsTyresDoNotCarryIsNotMet() {
        assertEquals(Verdict.NOT_MET, front("1232 kg").verdict());
    }

    @Test
    void anAxleOfTheirFullLoadIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, front("1230 kg").verdict());
    }

    /** A tyre carries its wheel: 620 kg on one side is too much though both sides together are within 1230 kg. */
    @Test
    void aWheelCanOverloadItsTyreThoughTheAxleDoesNot() {
        var leaning = JobText.onFourCorners().corners("as-delivered", 620, 580, 398, 388);
        assertEquals(Verdict.MET, leaning.found(new TyreLoad(), FRONT).verdict());
        assertEquals(
                Verdict.NOT_MET,
                leaning.found(new TyreLoad(), "left front wheel, as delivered").verdict());
    }

    @Test
    void wheelsAreOnlyAskedForWhereTheyWereWeighed() {
        assertEquals(2, job.examined(new TyreLoad()).rows().size());
        assertEquals(6, JobText.onFourCorners().examined(new TyreLoad()).rows().size());
    }

    @Test
    void theLoadOnTheSidewallGoesBeforeTheTable() {
        job.with("vehicle.tyres.front", "{ load-index: \"91\", max-load: 500 kg }");
        assertEquals(81.4, front("814 kg").value(), 1e-9);
    }

    @Test
    void aTableNobodyConfirmedMayHoldButNotClear() {
        job.without("confirmations").confirming("un-ece", "tyre-load");
        assertEquals(Verdict.MET_UNCONFIRMED, front("814 kg").verdict());
        assertTrue(front("814 kg").finding().reservations().toString().contains("table tyre-load-index"));
        assertEquals(Verdict.NOT_MET, front("1300 kg").verdict());
    }

    /** The index holds in full up to 210 km/h (UN R30, section 2, from memory); above it the tyre carries less. */
    @Test
    void aboveTwoHundredAndTenTheIndexSaysNothing() {
        assertEquals(
                Verdict.MET,
                job.with("vehicle.top-speed", "210 km/h")
                        .found(new TyreLoad(), FRONT)
                        .verdict());
        var fast = job.with("vehicle.top-speed", "211 km/h").found(new TyreLoad(), FRONT);
        assertEquals(Verdict.NO_EVIDENCE, fast.verdict());
        assertTrue(fast.why().contains("v <= 210"), fast.why());
    }

    @Test
    void tyresNobodyLookedAtAreNoEvidence() {
        var bare = job.without("vehicle.tyres");
        for (Examination.Row row : bare.examined(new TyreLoad()).rows()) {
            assertEquals(Verdict.NO_EVIDENCE, row.verdict());
        }
        assertEquals(
                List.of("vehicle.tyres.front.load-index"),
                bare.found(new TyreLoad(), FRONT).missing());
    }

    @Test
    void anIndexTheTableDoesNotHaveIsNoEvidence() {
        var found = job.with("vehicle.tyres.front", "{ load-index: \"200\" }").found(new TyreLoad(), FRONT);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("`200` is not in table"), found.why());
    }
}
