package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Quantity;
import org.junit.jupiter.api.Test;

class RideFrequencyTest {
    private static final String REAR = "rear axle, as delivered";

    /** A spring of one wheel under half the axle, nothing unsprung. */
    private static double frequency(String rate, String axleMass) {
        return Found.value(Working.fill(RideFrequency.FREQUENCY)
                .put("k", exact(rate))
                .put("m", exact(axleMass))
                .put("m_u", exact("0 kg"))
                .work());
    }

    private static Term exact(String quantity) {
        return Known.exact("", quantity, Quantity.of(quantity), Basis.STATED, "book");
    }

    /** Published in a textbook of statics and dynamics, sample 8/1: 25 lb on 160 lbf/ft swings at 2.28 Hz. */
    @Test
    void aMassOnASpringSwingsAsTheBookSays() {
        assertEquals(2.28, frequency("13.3333333 lbf/in", "50 lb"), 0.005);
    }

    /** Published in a suspension calculator: 350 kg on 28.125 N/mm rides at 1.427 Hz. */
    @Test
    void aCornerRidesAsTheCalculatorSays() {
        assertEquals(1.427, frequency("28.125 N/mm", "700 kg"), 0.0005);
    }

    /** 10 in of static deflection is 0.989 Hz: f = √(g/δ)/2π, worked by hand. */
    @Test
    void tenInchesOfDeflectionIsAboutOneHertz() {
        assertEquals(0.989, frequency("9.80665 N/mm", "508 kg"), 0.0005);
    }

    private static final String SPRING = "{ rate: 30 N/mm, motion-ratio: \"1\", lean: 0°, tyre-rate: 200 N/mm, "
            + "unsprung-mass: 36 kg, from: maker }";

    /** Worked by hand from f₂ = f₁·√(m₁/m₂) of the sprung masses, 650 − 72 and 786 − 72 kg. */
    @Test
    void moreMassOnTheSameSpringSwingsSlower() {
        var job = JobText.onTwoAxles().with("vehicle.springs.rear", SPRING);
        double before = job.found(new RideFrequency(), "rear axle, as received").value();
        double after = job.found(new RideFrequency(), REAR).value();
        assertEquals(Math.sqrt(578.0 / 714.0), after / before, 1e-9);
        assertEquals("Hz", job.found(new RideFrequency(), REAR).unit());
        assertEquals(Verdict.NO_LIMIT, job.found(new RideFrequency(), REAR).verdict());
    }

    @Test
    void anAxleLighterThanItsWheelsHasNoFrequency() {
        var found = JobText.onTwoAxles()
                .with("vehicle.springs.rear", SPRING)
                .with("weighings.as-delivered.axles.rear", "70 kg")
                .found(new RideFrequency(), REAR);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("m > 2*m_u"), found.why());
    }

    @Test
    void springsNobodyKnowsGiveNoFrequency() {
        var found = JobText.onTwoAxles()
                .with("vehicle.springs.rear", SPRING.replace(", unsprung-mass: 36 kg", ""))
                .found(new RideFrequency(), REAR);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("vehicle.springs.rear.unsprung-mass"), found.missing());
    }
}
