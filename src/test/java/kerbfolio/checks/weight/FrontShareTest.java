package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class FrontShareTest {
    private final JobText job = JobText.onTwoAxles();

    /** By hand: 750 of 1400 kg before, 814 of 1600 kg after. */
    @Test
    void theFrontShareIsFrontOverWhole() {
        assertEquals(53.571, job.found(new FrontShare(), "as received").value(), 0.0005);
        assertEquals(50.875, job.found(new FrontShare(), "as delivered").value(), 1e-9);
        assertEquals("%", job.found(new FrontShare(), "as delivered").unit());
    }

    @Test
    void itIsPrintedAndNotJudged() {
        assertEquals(
                Verdict.NO_LIMIT, job.found(new FrontShare(), "as delivered").verdict());
    }

    @Test
    void anAxleNobodyWeighedGivesNoShare() {
        var found = job.without("weighings.as-received.axles")
                .with("weighings.as-received.total", "1400 kg")
                .found(new FrontShare(), "as received");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("weighings.as-received.axles.front"), found.missing());
    }
}
