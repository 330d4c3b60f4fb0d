package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Working;
import org.junit.jupiter.api.Test;

class SuspensionTest {
    private static Working rate(String spring) {
        return JobText.onTwoAxles()
                .with("vehicle.springs.front", spring)
                .car()
                .suspension(Axle.FRONT)
                .rate();
    }

    /** Published in a suspension calculator: 50 N/mm at a motion ratio of 0.75 is 28.125 N/mm at the wheel. */
    @Test
    void theWheelSeesTheSpringThroughTheSquareOfTheMotionRatio() {
        Working wheel = (Working) rate("{ rate: 50 N/mm, motion-ratio: \"0.75\", lean: 0°, tyre-rate: 200 N/mm }")
                .inputs()
                .get("k_w")
                .get(0);
        assertEquals(28.125, Found.value(wheel), 1e-9);
        assertEquals("N/mm", wheel.unit().text());
    }

    /** By hand: a spring that leans 60° works through half its rate, and the square of that. */
    @Test
    void aLeaningSpringIsSofter() {
        Working wheel = (Working) rate("{ rate: 50 N/mm, motion-ratio: \"1\", lean: 60°, tyre-rate: 200 N/mm }")
                .inputs()
                .get("k_w")
                .get(0);
        assertEquals(12.5, Found.value(wheel), 1e-9);
    }

    /** By hand: 50 and 200 N/mm in series are 40 N/mm. */
    @Test
    void springAndTyreAreInSeries() {
        assertEquals(
                40, Found.value(rate("{ rate: 50 N/mm, motion-ratio: \"1\", lean: 0°, tyre-rate: 200 N/mm }")), 1e-9);
    }

    @Test
    void anAxleOfUnknownSpringsAsksForThem() {
        Suspension suspension = JobText.blank().car().suspension(Axle.REAR);
        assertEquals(
                List.of(
                        "vehicle.springs.rear.rate",
                        "vehicle.springs.rear.motion-ratio",
                        "vehicle.springs.rear.lean",
                        "vehicle.springs.rear.tyre-rate"),
                suspension.rate().missing().stream().map(Absent::path).toList());
        assertTrue(suspension.unsprungMass().amount().isEmpty());
        assertTrue(suspension.heightBefore().amount().isEmpty());
        assertTrue(suspension.heightAfter().amount().isEmpty());
        assertEquals(Axle.REAR, suspension.axle());
    }
}
