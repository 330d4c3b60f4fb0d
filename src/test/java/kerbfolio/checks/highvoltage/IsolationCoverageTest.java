package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** That a reading speaks only of what was joined is a rule of this program; the counts by hand. */
class IsolationCoverageTest {
    private final JobText job = Confirmed.sound();

    private Found inverter() {
        return job.found(new IsolationCoverage(), "inverter");
    }

    @Test
    void aPartJoinedInTwoReadingsIsMet() {
        assertEquals(2, inverter().value());
        assertEquals("iso-1, iso-2", inverter().why());
        assertEquals(Verdict.MET, inverter().verdict());
    }

    @Test
    void anInverterNobodyJoinedIsFoundByName() {
        job.alter("readings.isolation", "iso-1", "inverter, ", "")
                .alter("readings.isolation", "iso-2", "inverter, ", "");
        assertEquals(0, inverter().value());
        assertEquals(Verdict.NOT_MET, inverter().verdict());
        assertEquals(Verdict.MET, job.found(new IsolationCoverage(), "charger").verdict());
    }

    @Test
    void aReadingThatCannotBeUsedCoversNothing() {
        job.drop("readings.isolation", "iso-2").alter("readings.isolation", "iso-1", ", meter-resistance: 10 MΩ", "");
        assertEquals(Verdict.NOT_MET, inverter().verdict());
    }

    @Test
    void whatSitsInABoxIsJoinedWithIt() {
        assertTrue(job.examined(new IsolationCoverage()).rows().stream()
                .noneMatch(row -> row.finding().subject().contains("fuse")));
    }

    @Test
    void readingsNobodyTookAreNoEvidence() {
        job.drop("readings.isolation", "iso-1").drop("readings.isolation", "iso-2");
        assertEquals(Verdict.NO_EVIDENCE, inverter().verdict());
        assertEquals(List.of("readings.isolation"), inverter().missing());
    }

    @Test
    void aJobWithoutPartsAsksForThem() {
        assertEquals(
                List.of("parts"), JobText.blank().found(new IsolationCoverage()).missing());
        assertFalse(new IsolationCoverage().isWaivable());
    }
}
