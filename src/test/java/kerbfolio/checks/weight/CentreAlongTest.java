package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class CentreAlongTest {
    /** Published in an owners' forum: axles of 813.6 and 994.4 lb, 73.5 in apart, centre 40.425 in behind the front one. */
    @Test
    void theCentreLiesWhereTheMomentsBalance() {
        var found = JobText.onTwoAxles()
                .with("vehicle.wheelbase", "73.5 in")
                .with("weighings.as-delivered.axles", "{ front: 813.6 lb, rear: 994.4 lb }")
                .found(new CentreAlong(), "as delivered");
        assertEquals(40.425 * 25.4, found.value(), 0.0005 * 25.4);
        assertEquals("mm", found.unit());
        assertEquals(Verdict.NO_LIMIT, found.verdict());
    }

    @Test
    void itIsShownBeforeAndAfter() {
        // By hand: 650 of 1400 kg and 786 of 1600 kg on the rear axle, 2500 mm.
        var job = JobText.onTwoAxles();
        assertEquals(1160.7, job.found(new CentreAlong(), "as received").value(), 0.05);
        assertEquals(1228.1, job.found(new CentreAlong(), "as delivered").value(), 0.05);
    }

    @Test
    void cornersGiveTheSameAsTheirAxles() {
        var random = new Random(11);
        for (int i = 0; i < 20; i++) {
            int lf = 200 + random.nextInt(300);
            int rf = 200 + random.nextInt(300);
            int lr = 200 + random.nextInt(300);
            int rr = 200 + random.nextInt(300);
            var corners = JobText.onFourCorners().corners("as-delivered", lf, rf, lr, rr);
            var axles = JobText.onTwoAxles()
                    .with("weighings.as-delivered.axles.front", lf + rf + " kg")
                    .with("weighings.as-delivered.axles.rear", lr + rr + " kg");
            assertEquals(
                    axles.found(new CentreAlong(), "as delivered").value(),
                    corners.found(new CentreAlong(), "as delivered").value(),
                    1e-9);
        }
    }

    @Test
    void aWheelbaseNobodyMeasuredGivesNoCentre() {
        var found = JobText.onTwoAxles().without("vehicle.wheelbase").found(new CentreAlong(), "as delivered");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.wheelbase"), found.missing());
    }
}
