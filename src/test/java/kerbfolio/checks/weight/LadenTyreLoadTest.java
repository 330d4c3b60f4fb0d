package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Two tyres of load index 91 carry 1230 kg (UN R30, section 2). Front axle: 814 kg weighed, 850 kg permitted. */
class LadenTyreLoadTest {
    private static final String LADEN = "front axle, with the declared load";
    private static final String PERMITTED = "front axle, at its permitted mass";

    /** A load right over the front axle. */
    private static Found laden(String mass) {
        return JobText.onTwoAxles()
                .with("vehicle.load", "[{ name: crate, mass: " + mass + ", position: { x: 0 mm } }]")
                .found(new LadenTyreLoad(), LADEN);
    }

    @Test
    void aLoadTheTyresCarryIsMet() {
        assertEquals(914.0 / 1230 * 100, laden("100 kg").value(), 1e-9);
        assertEquals(Verdict.MET, laden("100 kg").verdict());
    }

    @Test
    void aLoadTheTyresDoNotCarryIsNotMet() {
        assertEquals(Verdict.NOT_MET, laden("420 kg").verdict());
    }

    @Test
    void aLoadUpToTheFullIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, laden("416 kg").verdict());
    }

    @Test
    void aLoadNobodyDeclaredIsNoEvidenceButThePlateStillIs() {
        var job = JobText.onTwoAxles();
        assertEquals(Verdict.NO_EVIDENCE, job.found(new LadenTyreLoad(), LADEN).verdict());
        assertEquals(
                List.of("vehicle.load"), job.found(new LadenTyreLoad(), LADEN).missing());
        assertEquals(Verdict.MET, job.found(new LadenTyreLoad(), PERMITTED).verdict());
    }

    @Test
    void tyresTooSmallForThePlateAreNotMetHoweverLightTheCar() {
        var found = JobText.onTwoAxles()
                .with("vehicle.ratings.front-axle", "1231 kg")
                .found(new LadenTyreLoad(), PERMITTED);
        assertEquals(Verdict.NOT_MET, found.verdict());
    }
}
