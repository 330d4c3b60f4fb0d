package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/**
 * A car of known height: 1500 kg, wheelbase 2.6 m, centre 1.2 m behind the front axle and 0.55 m up, loaded radii 0.30 and
 * 0.31 m. What its front axle weighs at each angle is worked in {@code CentreTest} from the turned car itself.
 */
class CentreHeightTest {
    private static JobText tilted(String... steps) {
        return JobText.onTwoAxles()
                .with("vehicle.wheelbase", "2600 mm")
                .with("weighings.as-delivered.axles", "{ front: 807.692 kg, rear: 692.308 kg }")
                .with("weighings.tilt.instrument", "pads")
                .with("weighings.tilt.length-instrument", "tape")
                .with("weighings.tilt.angle-instrument", "level")
                .with("weighings.tilt.loaded-radius", "{ front: 300 mm, rear: 310 mm }")
                .with("weighings.tilt.steps", "[" + String.join(", ", steps) + "]");
    }

    @Test
    void eachLiftGivesAHeight() {
        var job = tilted(
                "{ angle: 5.0°, front-axle: 820.0821 kg }",
                "{ angle: 10.0°, front-axle: 832.6715 kg }",
                "{ angle: 15.0°, front-axle: 845.6645 kg }");
        for (String lift : List.of("lift 1", "lift 2", "lift 3")) {
            assertEquals(550, job.found(new CentreHeight(), lift).value(), 0.05, lift);
            assertEquals(Verdict.NO_LIMIT, job.found(new CentreHeight(), lift).verdict());
        }
        assertEquals(550, job.found(new CentreHeight(), "mean of the lifts").value(), 0.05);
        assertEquals(4, job.examined(new CentreHeight()).rows().size());
    }

    /** The more the car is raised, the less an error of the scales weighs. */
    @Test
    void aHigherLiftKnowsTheHeightBetter() {
        var job = tilted("{ rise: 225.6 mm, front-axle: 820.0821 kg }", "{ rise: 672.6 mm, front-axle: 845.6645 kg }");
        assertTrue(job.found(new CentreHeight(), "lift 2").reach()
                < job.found(new CentreHeight(), "lift 1").reach() / 2);
    }

    @Test
    void aCarNobodyRaisedGivesNoHeight() {
        var found = JobText.onTwoAxles().found(new CentreHeight(), "lift 1");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(
                List.of(
                        "weighings.tilt.loaded-radius.front",
                        "weighings.tilt.loaded-radius.rear",
                        "weighings.tilt.steps[0].front-axle",
                        "weighings.tilt.steps[0].rise"),
                found.missing().stream().sorted().toList());
    }

    @Test
    void aRiseOfNothingGivesNoHeight() {
        var found = tilted("{ rise: 0 mm, front-axle: 807.692 kg }").found(new CentreHeight(), "lift 1");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("needs H > 0"), found.why());
    }

    @Test
    void aRiseBeyondTheWheelbaseGivesNoHeight() {
        var found = tilted("{ rise: 2.7 m, front-axle: 900 kg }").found(new CentreHeight(), "lift 1");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
    }
}
