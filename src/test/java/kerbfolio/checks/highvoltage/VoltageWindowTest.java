package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** 88 cells in series: 369.6 V when full (4.2 V each), 264.0 V when empty (3.0 V each); by hand. */
class VoltageWindowTest {
    private final JobText job = Confirmed.sound();

    private Found heater(String rating) {
        return job.alter("parts", "heater", "max-voltage: 420 V", rating)
                .found(new VoltageWindow(), "heater, pack full");
    }

    @Test
    void aPartMadeForMoreThanTheFullPackIsMet() {
        assertEquals(50.4, job.found(new VoltageWindow(), "heater, pack full").value(), 1e-9);
        assertEquals(
                Verdict.MET, job.found(new VoltageWindow(), "heater, pack full").verdict());
    }

    @Test
    void aPartTheFullPackExceedsIsNamed() {
        assertEquals(Verdict.NOT_MET, heater("max-voltage: 360 V").verdict());
    }

    @Test
    void aPartMadeForExactlyTheFullPackIsMet() {
        assertEquals(Verdict.MET, heater("max-voltage: 369.6 V").verdict());
    }

    @Test
    void aRatingWithAnErrorIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, heater("max-voltage: 370 V ± 2 V").verdict());
    }

    @Test
    void aPartTheEmptyPackDoesNotRunIsNotMet() {
        var found = job.alter("parts", "inverter", "min-voltage: 200 V", "min-voltage: 270 V")
                .found(new VoltageWindow(), "inverter, pack empty");
        assertEquals(-6, found.value(), 1e-9);
        assertEquals(Verdict.NOT_MET, found.verdict());
    }

    @Test
    void whatLiesInTheConductorNeedsOnlyStandTheFullPack() {
        List<String> subjects = job.examined(new VoltageWindow()).rows().stream()
                .map(row -> row.finding().subject())
                .toList();
        assertTrue(subjects.contains("contactor-plus, pack full"));
        assertFalse(subjects.contains("contactor-plus, pack empty"));
        assertTrue(subjects.stream().noneMatch(subject -> subject.contains("box,") || subject.contains("fuse,")));
    }

    @Test
    void aRatingNobodyReadIsNoEvidence() {
        var found = job.alter("parts", "heater", "max-voltage: 420 V, ", "")
                .found(new VoltageWindow(), "heater, pack full");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts[heater].electrical.max-voltage"), found.missing());
    }

    @Test
    void aJobWithoutPartsAsksForThem() {
        var found = JobText.blank().found(new VoltageWindow());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
