package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.Checklist.Asked;
import kerbfolio.dossier.Checklist.Item;
import kerbfolio.dossier.Checklist.Subject;
import org.junit.jupiter.api.Test;

class ChecklistTest {
    private static JobText job() {
        return TractionText.sound().homeSet("un-ece").with("job.tier", "inspection");
    }

    private static Checklist checklist(JobText job) {
        return job.dossier().inspection().highVoltage().checklist();
    }

    private static Subject subject(JobText job, String id) {
        return checklist(job).subjects().stream()
                .filter(subject -> subject.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Item item(Subject subject, String check, String of) {
        return subject.items().stream()
                .filter(item -> item.check().equals(check) && item.of().equals(of))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void whatIsAskedStandsOnceWithItsClause() {
        List<Asked> asked = checklist(job()).asked();
        assertEquals(
                List.of(
                        "touch-protection",
                        "warning-symbol",
                        "isolation-coverage",
                        "bonding",
                        "interlock-loop",
                        "cable-colour"),
                asked.stream().map(Asked::check).toList());
        // UN R100, 5.1.1.5: marking of the battery and of cases behind which there is high voltage.
        assertTrue(asked.get(1).clauses().toString().contains("5.1.1.5"), asked.toString());
    }

    /** UN R100, 5.1.1.1 and 5.1.1.2: IPXXD in the passenger and luggage compartment, IPXXB elsewhere. */
    @Test
    void theDegreeOfProtectionIsThatOfThePlace() {
        assertEquals("IPXXB", subject(job(), "front-box").protection());
        assertEquals("luggage", subject(job(), "rear-box").place());
        assertEquals("IPXXD", subject(job(), "rear-box").protection());
        assertEquals("", subject(job(), "c-inverter").protection());
    }

    @Test
    void anItemSaysWhatTheRecordShowsInAFewWords() {
        Item closed = item(subject(job(), "front-box"), "touch-protection", "closed");
        assertEquals("IP67, maker", closed.shown());
        assertTrue(closed.clause().startsWith("at least 2, UN Regulation No. 100"), closed.clause());
        Item plug = item(subject(job(), "disconnect"), "touch-protection", "plug");
        assertTrue(plug.shown().contains("has a lock"), plug.shown());
    }

    @Test
    void whatNobodySawIsAskedFor() {
        JobText job = job().without("labels");
        Item symbol = item(subject(job, "front-box"), "warning-symbol", "");
        assertEquals(Verdict.NO_EVIDENCE, symbol.verdict());
        assertTrue(symbol.shown().startsWith("not recorded"), symbol.shown());
    }

    @Test
    void cablesStandApartWithTheirColour() {
        Checklist list = checklist(job());
        assertFalse(list.cables().isEmpty());
        assertTrue(list.cables().stream().allMatch(cable -> cable.colour().equals("orange")));
        assertTrue(list.cables().stream()
                .flatMap(cable -> cable.items().stream())
                .allMatch(item -> item.check().equals("cable-colour")));
        assertTrue(list.parts().stream().noneMatch(part -> part.name().startsWith("cable")));
    }

    @Test
    void aCarWithoutHighVoltageHasNone() {
        assertTrue(checklist(JobText.onTwoAxles()).subjects().isEmpty());
    }
}
