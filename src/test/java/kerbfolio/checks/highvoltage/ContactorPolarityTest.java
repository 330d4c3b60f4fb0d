package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Makers of marked contactors: the terminal marked plus faces the source in the plus conductor, the load in the minus one (common practice, no source). */
class ContactorPolarityTest {
    private final JobText job = TractionText.sound();

    private Found found(String contactor) {
        return job.found(new ContactorPolarity(), contactor);
    }

    @Test
    void inThePlusConductorTheMarkFacesThePackAndInTheMinusConductorAway() {
        assertEquals(Verdict.MET, found("contactor-plus").verdict());
        assertEquals(Verdict.MET, found("contactor-minus").verdict());
        assertEquals("at contactor-minus/2", found("contactor-minus").why());
    }

    @Test
    void aContactorTheWrongWayRoundIsNotMet() {
        job.alter("parts", "contactor-plus", "plus-terminal: \"1\"", "plus-terminal: \"2\"")
                .alter("parts", "contactor-minus", "plus-terminal: \"2\"", "plus-terminal: \"1\"");
        assertEquals(Verdict.NOT_MET, found("contactor-plus").verdict());
        assertEquals(Verdict.NOT_MET, found("contactor-minus").verdict());
    }

    @Test
    void withoutAPolarityAnyWayWillDo() {
        job.alter("parts", "contactor-plus", "polarised: yes", "polarised: no");
        assertEquals(Verdict.MET, found("contactor-plus").verdict());
    }

    @Test
    void whatNobodyLookedAtIsNoEvidence() {
        job.alter("parts", "contactor-plus", "polarised: yes, ", "")
                .alter("parts", "contactor-minus", ", plus-terminal: \"2\"", "");
        assertEquals(
                List.of("parts[contactor-plus].contactor.polarised"),
                found("contactor-plus").missing());
        assertEquals(
                List.of("parts[contactor-minus].contactor.plus-terminal"),
                found("contactor-minus").missing());
    }

    @Test
    void aContactorNoBoxIsJoinedToIsNoEvidence() {
        job.drop("links", "b1");
        assertEquals(Verdict.NO_EVIDENCE, found("contactor-minus").verdict());
        assertTrue(
                found("contactor-minus").why().contains("which side"),
                found("contactor-minus").why());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new ContactorPolarity());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
