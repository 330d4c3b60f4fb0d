package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/** Cables outside cases have an orange outer cover (UN R100, 5.1.1.5.3). */
class CableColourTest {
    private final JobText job = Confirmed.sound();

    private Found found() {
        return job.found(new CableColour(), "c-plus");
    }

    private void seen() {
        job.add("labels", "{ on: c-plus, shows: orange-cover, by: A. Tester, date: 2026-09-30 }");
    }

    @Test
    void orangeSomebodySawIsMet() {
        seen();
        assertEquals(Verdict.MET, found().verdict());
        job.alter("links", "c-plus", "colour: orange, ", "");
        assertEquals(Verdict.MET, found().verdict());
    }

    @Test
    void orangeNobodySawClearsNothing() {
        assertEquals(Verdict.MET_UNCONFIRMED, found().verdict());
    }

    @Test
    void anotherColourIsNotMetWhateverALabelSays() {
        seen();
        job.alter("links", "c-plus", "colour: orange", "colour: black");
        assertEquals(Verdict.NOT_MET, found().verdict());
        assertTrue(found().finding().result().name().contains("black"));
    }

    @Test
    void aPhotographNamesNobody() {
        job.alter("links", "c-plus", "colour: orange, ", "").add("photos", "{ file: c.jpg, subject: c-plus }");
        assertEquals(Verdict.NO_EVIDENCE, found().verdict());
    }

    @Test
    void aColourNobodyRecordedIsNoEvidence() {
        job.alter("links", "c-plus", "colour: orange, ", "");
        assertEquals(List.of("labels[c-plus]"), found().missing());
        assertEquals(List.of("links"), JobText.blank().found(new CableColour()).missing());
    }

    @Test
    void everyCableIsAskedForAndNoBusbar() {
        List<String> asked = job.examined(new CableColour()).rows().stream()
                .map(row -> row.finding().subject())
                .toList();
        assertEquals(13, asked.size());
        assertTrue(asked.contains("c-motor") && asked.contains("c-inlet"));
        assertFalse(asked.contains("b1"));
    }

    @Test
    void aCableInsideOneCaseMayHaveAnyColour() {
        job.add("links", "{ id: inner, kind: high-voltage, from: front-fuse/2, to: contactor-plus/1, colour: black }")
                .drop("links", "b4");
        assertTrue(job.examined(new CableColour()).rows().stream()
                .noneMatch(row -> row.finding().subject().equals("inner")));
        assertEquals(Optional.of(Gate.INSPECTION), new CableColour().gate());
    }
}
