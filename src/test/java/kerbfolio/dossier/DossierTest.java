package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class DossierTest {
    @Test
    void sectionsThisVersionDoesNotExamineAreNamed() {
        var dossier = JobText.blank()
                .with("tests", "[lamps, horn]")
                .with("handed-over", "{ keys: \"2\" }")
                .dossier();
        assertEquals(List.of("tests (2 entries)", "handed-over (1 entry)"), dossier.unexamined());
        assertEquals(List.of(), JobText.blank().dossier().unexamined());
    }

    @Test
    void theJobsOwnUnitsStandLarge() {
        assertEquals(UnitSystem.SI, JobText.blank().dossier().units());
        assertEquals(
                UnitSystem.US, JobText.blank().with("job.units", "us").dossier().units());
    }

    @Test
    void whatIsNotWrittenIsADash() {
        Head head = JobText.blank().dossier().head();
        assertEquals("1", head.number());
        assertEquals("2026-10-01", head.date());
        assertEquals("full", head.tier());
        assertEquals("A. Tester", head.preparedBy());
        assertEquals("Kerbfolio 0", head.program());
        assertEquals("0000-0000-0000-0000", head.fingerprint());
        assertEquals("a4", head.paper());
        assertEquals("car not described", head.car());
        for (String missing : List.of(head.shop(), head.customer(), head.phone())) {
            assertEquals("\u2014", missing);
        }
        assertTrue(head.lines().contains(new Head.Line("prepared by", "A. Tester")));
    }

    @Test
    void cautionsDeferToLocalCodesAndLicensedPeople() {
        assertTrue(JobText.blank().dossier().cautions().toString().contains("local codes and licensed people decide"));
    }

    @Test
    void onlyWhatHasSomethingToSayIsPrinted() {
        var examinations = TractionText.complete().dossier().examinations();
        assertFalse(examinations.isEmpty());
        assertTrue(examinations.stream()
                .flatMap(examination -> examination.rows().stream())
                .allMatch(row -> row.finding().result().amount().isPresent()));
    }
}
