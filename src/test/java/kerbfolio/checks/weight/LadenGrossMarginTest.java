package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The car of 1600 kg on a plate of 1700 kg, with what its owner declares. */
class LadenGrossMarginTest {
    private static Found laden(String mass) {
        return JobText.onTwoAxles()
                .with("vehicle.load", "[{ name: driver, mass: " + mass + " }]")
                .found(new LadenGrossMargin());
    }

    @Test
    void aLoadWithinThePlateIsMet() {
        assertEquals(20, laden("80 kg").value(), 1e-9);
        assertEquals(Verdict.MET, laden("80 kg").verdict());
    }

    @Test
    void aLoadBeyondThePlateIsNotMet() {
        assertEquals(Verdict.NOT_MET, laden("102 kg").verdict());
    }

    @Test
    void aLoadUpToThePlateIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, laden("100 kg").verdict());
        // 80 kg ± 40 kg: the whole uncertainty of 2·40/√3 = 46 kg must lie within.
        assertEquals(Verdict.UNDECIDED, laden("80 kg ± 40 kg").verdict());
    }

    @Test
    void aLoadNobodyDeclaredIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new LadenGrossMargin());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.load"), found.missing());
    }

    @Test
    void aLoadOfUnknownMassIsNoEvidence() {
        var found = JobText.onTwoAxles()
                .with("vehicle.load", "[{ name: driver, mass: 80 kg }, { name: dog }]")
                .found(new LadenGrossMargin());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.load[1].mass"), found.missing());
    }
}
