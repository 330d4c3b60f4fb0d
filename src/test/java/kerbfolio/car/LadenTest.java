package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import org.junit.jupiter.api.Test;

class LadenTest {
    /** A truck body-builder manual, appendix B: 14 500 lb, 156 in behind the front axle of 214 in. */
    @Test
    void aLoadIsSplitAsTheBodyBuildersManualSplitsIt() {
        Laden laden = JobText.onTwoAxles()
                .with("vehicle.wheelbase", "214 in")
                .with("weighings.as-delivered.axles", "{ front: 0 lb, rear: 0 lb }")
                .with("vehicle.load", "[{ name: body, mass: 14500 lb, position: { x: 156 in } }]")
                .car()
                .laden();
        double pound = 0.45359237;
        assertEquals(10570, Found.value(laden.axle(Axle.REAR)) / pound, 0.5);
        // Printed as 3929.9, which is 14 500 less 10 570.1.
        assertEquals(3929.9, Found.value(laden.axle(Axle.FRONT)) / pound, 0.05);
        assertEquals(14500, Found.value(laden.total()) / pound, 1e-6);
    }

    @Test
    void theAxlesCarryTheWholeWhereverTheLoadSits() {
        var random = new Random(5);
        for (int i = 0; i < 20; i++) {
            int mass = random.nextInt(300);
            int x = random.nextInt(4000) - 800;
            Laden laden = JobText.onTwoAxles()
                    .with(
                            "vehicle.load",
                            "[{ name: a, mass: " + mass + " kg, position: { x: " + x + " mm } },"
                                    + " { name: b, mass: 75 kg, position: { x: 1300 mm } }]")
                    .car()
                    .laden();
            assertEquals(
                    Found.value(laden.total()),
                    Found.value(laden.axle(Axle.FRONT)) + Found.value(laden.axle(Axle.REAR)),
                    1e-9);
            assertEquals(1600 + mass + 75, Found.value(laden.total()), 1e-9);
        }
    }
}
