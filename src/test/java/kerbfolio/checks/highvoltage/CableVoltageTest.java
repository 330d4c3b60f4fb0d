package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The full pack has 22 × 4 × 4.2 V = 369.6 V. */
class CableVoltageTest {
    private final JobText job = TractionText.sound();

    private Found rated(String volts) {
        return job.alter("links", "c-plus", "1000 V", volts).found(new CableVoltage(), "c-plus");
    }

    @Test
    void aCableForMoreThanTheFullPackIsMet() {
        assertEquals(36.96, job.found(new CableVoltage(), "c-plus").value(), 1e-9);
        assertEquals(Verdict.MET, rated("369.6 V").verdict());
    }

    @Test
    void aCableForTheNominalVoltageOnlyIsNotMet() {
        assertEquals(Verdict.NOT_MET, rated("321.2 V").verdict());
    }

    @Test
    void aRatingInDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, rated("370 V ± 10 V").verdict());
    }

    /** Cables of 900 V for direct current (ISO 19642 classes, from memory): enough for 800 V, not for 950 V. */
    @Test
    void aClassOfNineHundredVoltsBearsEightHundredAndNotNineHundredAndFifty() {
        job.alter("links", "c-plus", "1000 V", "900 V");
        var cell = "{ from: maker, max-voltage: %s V }";
        assertEquals(
                Verdict.MET,
                job.with("pack.cell", cell.formatted("9.09"))
                        .found(new CableVoltage(), "c-plus")
                        .verdict());
        assertEquals(
                Verdict.NOT_MET,
                job.with("pack.cell", cell.formatted("10.8"))
                        .found(new CableVoltage(), "c-plus")
                        .verdict());
    }

    @Test
    void thePhasesOfTheMotorAreAskedTooAndTheMainsIsNot() {
        var subjects = job.examined(new CableVoltage()).rows().stream()
                .map(row -> row.finding().subject())
                .toList();
        assertTrue(subjects.contains("c-motor") && !subjects.contains("c-inlet"), subjects.toString());
    }

    @Test
    void aRatingNobodyWroteOrOfNothingIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, rated("0 V").verdict());
        var bare = TractionText.sound().alter("links", "c-plus", "voltage: 1000 V, ", "");
        assertEquals(
                List.of("links[c-plus].voltage"),
                bare.found(new CableVoltage(), "c-plus").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new CableVoltage());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
