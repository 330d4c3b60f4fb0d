package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class LeftShareTest {
    /** By hand: 400 + 340 of 1400 kg before, 420 + 398 of 1600 kg after. */
    @Test
    void theLeftShareIsBothLeftWheelsOverTheWhole() {
        var job = JobText.onFourCorners();
        assertEquals(52.857, job.found(new LeftShare(), "as received").value(), 0.0005);
        assertEquals(51.125, job.found(new LeftShare(), "as delivered").value(), 1e-9);
        assertEquals(
                Verdict.NO_LIMIT, job.found(new LeftShare(), "as delivered").verdict());
    }

    @Test
    void wheelsNobodyWeighedGiveNoShare() {
        var found = JobText.onTwoAxles().found(new LeftShare(), "as delivered");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(
                List.of("weighings.as-delivered.corners.left-front", "weighings.as-delivered.corners.left-rear"),
                found.missing());
    }
}
