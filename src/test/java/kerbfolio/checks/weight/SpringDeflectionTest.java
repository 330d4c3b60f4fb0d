package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class SpringDeflectionTest {
    /** A tyre ten million times as stiff as the spring, so that the spring alone is seen. */
    private static final String SPRING =
            "{ rate: 9.80665 N/mm, motion-ratio: \"1\", lean: 0°, tyre-rate: 98066500 N/mm, from: maker }";

    private static JobText springs(double rearGain) {
        return JobText.onTwoAxles()
                .with("vehicle.springs.rear", SPRING)
                .with("weighings.as-delivered.axles.rear", 650 + rearGain + " kg");
    }

    /** Published: 250 kg on a spring of 1 kilogram-force per millimetre (9.80665 N/mm) is 250 mm; here on each side. */
    @Test
    void moreMassLowersTheBody() {
        var found = springs(500).found(new SpringDeflection(), "rear axle");
        assertEquals(-250, found.value(), 0.5);
        assertEquals("mm", found.unit());
        assertEquals(Verdict.NO_LIMIT, found.verdict());
    }

    @Test
    void lessMassRaisesIt() {
        assertEquals(25, springs(-50).found(new SpringDeflection(), "rear axle").value(), 0.05);
    }

    @Test
    void springsNobodyKnowsGiveNoExpectation() {
        var found = JobText.onTwoAxles().found(new SpringDeflection(), "rear axle");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(
                List.of(
                        "vehicle.springs.rear.rate",
                        "vehicle.springs.rear.motion-ratio",
                        "vehicle.springs.rear.lean",
                        "vehicle.springs.rear.tyre-rate"),
                found.missing());
    }
}
