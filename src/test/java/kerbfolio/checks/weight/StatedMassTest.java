package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The scales say 1600 kg and + 200 kg, from two and four readings of ± 1 kg. */
class StatedMassTest {
    private static Found kerbMass(String stated) {
        return JobText.onTwoAxles()
                .with("stated", "{ by: shop, kerb-mass: " + stated + " }")
                .found(new StatedMass(), "kerb mass");
    }

    private static Found change(String stated) {
        return JobText.onTwoAxles()
                .with("stated", "{ by: shop, mass-change: " + stated + " }")
                .found(new StatedMass(), "change of mass");
    }

    @Test
    void aStatedMassTheScalesConfirmIsMet() {
        assertEquals(Verdict.MET, kerbMass("1600 kg").verdict());
        assertEquals(Verdict.MET, change("200 kg").verdict());
        assertEquals(0, change("200 kg").value(), 1e-9);
    }

    @Test
    void aStatedMassTheScalesContradictIsNotMet() {
        assertEquals(Verdict.NOT_MET, kerbMass("1590 kg").verdict());
        assertEquals(Verdict.NOT_MET, change("150 kg").verdict());
    }

    /**
     * A figure on a sheet is rounded to its last digit. By hand: ± 1 kg twice and ± 0.5 kg make U = 2·√(2.25/3) = 1.732
     * kg.
     */
    @Test
    void aStatedMassIsTakenAsRounded() {
        assertEquals(1 / 1.732, kerbMass("1601 kg").value(), 0.0005);
        assertEquals(Verdict.NOT_MET, kerbMass("1602 kg").verdict());
    }

    /** By hand: with ± 10 kg written beside it, U = 2·√((100 + 2)/3) = 11.66 kg. */
    @Test
    void aStatedMassWithItsErrorAgreesWithinIt() {
        assertEquals(10 / 11.66, kerbMass("1610 kg ± 10 kg").value(), 0.0005);
        assertEquals(Verdict.MET, kerbMass("1610 kg ± 10 kg").verdict());
    }

    @Test
    void aLossStatedAsAGainIsNotMet() {
        assertEquals(Verdict.NOT_MET, change("-200 kg").verdict());
    }

    @Test
    void whatTheShopDoesNotStateIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new StatedMass(), "kerb mass");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("stated.kerb-mass"), found.missing());
    }

    @Test
    void whatNobodyIsNamedForDoesNotClear() {
        var found =
                JobText.onTwoAxles().with("stated", "{ kerb-mass: 1600 kg }").found(new StatedMass(), "kerb mass");
        assertEquals(Verdict.MET_UNCONFIRMED, found.verdict());
    }
}
