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

/** On or near a battery, and on every case that shows live parts when opened (UN R100, 5.1.1.5). */
class WarningSymbolTest {
    private final JobText job = Confirmed.sound();

    private Found label(String more) {
        return job.add("labels", "{ on: inverter, shows: warning-symbol" + more + " }")
                .found(new WarningSymbol(), "inverter");
    }

    @Test
    void aSymbolSomebodySawIsMet() {
        assertEquals(Verdict.MET, label(", by: A. Tester, date: 2026-09-30").verdict());
    }

    @Test
    void aSymbolNobodyIsNamedForClearsNothing() {
        assertEquals(Verdict.MET_UNCONFIRMED, label("").verdict());
    }

    @Test
    void aPhotographNamesNobody() {
        job.add("photos", "{ file: inverter.jpg, subject: inverter }");
        assertEquals(
                Verdict.NO_EVIDENCE, job.found(new WarningSymbol(), "inverter").verdict());
    }

    /** Somebody looked and there was none. */
    @Test
    void aLabelThatIsMissingIsNotMet() {
        job.add("labels", "{ on: inverter, shows: warning-symbol, there: no, by: A. Tester, date: 2026-09-30 }");
        assertEquals(Verdict.NOT_MET, job.found(new WarningSymbol(), "inverter").verdict());
    }

    @Test
    void anotherLabelIsNoSymbol() {
        job.add("labels", "{ on: inverter, shows: wait-time, by: A. Tester, date: 2026-09-30 }");
        assertEquals(
                Verdict.NO_EVIDENCE, job.found(new WarningSymbol(), "inverter").verdict());
    }

    @Test
    void aCaseNobodyLookedAtIsNoEvidence() {
        assertEquals(
                List.of("labels[front-box]"),
                job.found(new WarningSymbol(), "front-box").missing());
        assertEquals(
                List.of("parts"), JobText.blank().found(new WarningSymbol()).missing());
    }

    @Test
    void outOfReachOnlyABatteryNeedsOne() {
        job.alter("parts", "heater", "place: engine-bay", "place: underfloor")
                .alter("parts", "charger", "conductive: yes", "conductive: yes, hidden: yes")
                .alter("parts", "front-box", "place: engine-bay", "place: underfloor");
        List<String> asked = job.examined(new WarningSymbol()).rows().stream()
                .map(row -> row.finding().subject())
                .toList();
        assertFalse(asked.contains("heater") || asked.contains("charger") || asked.contains("inlet"));
        assertTrue(asked.contains("front-box") && asked.contains("inverter"));
        assertEquals(Optional.of(Gate.INSPECTION), new WarningSymbol().gate());
    }
}
