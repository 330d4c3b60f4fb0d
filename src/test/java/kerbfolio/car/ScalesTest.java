package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.formula.Basis;
import org.junit.jupiter.api.Test;

class ScalesTest {
    @Test
    void wheelsMakeAxlesAndAxlesTheWhole() {
        var random = new Random(3);
        for (int i = 0; i < 20; i++) {
            int lf = 200 + random.nextInt(300);
            int rf = 200 + random.nextInt(300);
            int lr = 200 + random.nextInt(300);
            int rr = 200 + random.nextInt(300);
            Scales scales = JobText.onFourCorners()
                    .corners("as-delivered", lf, rf, lr, rr)
                    .car()
                    .delivered();
            assertEquals(lf + rf, Found.value(scales.axle(Axle.FRONT)), 1e-9);
            assertEquals(lr + rr, Found.value(scales.axle(Axle.REAR)), 1e-9);
            assertEquals(lf + rf + lr + rr, Found.value(scales.total()), 1e-9);
        }
    }

    @Test
    void anAxleReadDirectlyIsMeasuredAndASumIsComputed() {
        assertEquals(
                Basis.MEASURED,
                JobText.onTwoAxles().car().delivered().axle(Axle.FRONT).basis());
        Scales corners = JobText.onFourCorners().car().delivered();
        assertEquals(Basis.COMPUTED, corners.axle(Axle.FRONT).basis());
        assertEquals("front axle as delivered", corners.axle(Axle.FRONT).name());
        assertEquals("whole car as delivered", corners.total().name());
    }

    @Test
    void publishedMassesAreStated() {
        Scales scales = JobText.onTwoAxles()
                .without("weighings.as-received.instrument")
                .with("weighings.as-received.stated-by", "handbook")
                .car()
                .received();
        assertTrue(scales.isStated());
        assertEquals(Basis.STATED, scales.axle(Axle.FRONT).basis());
        assertEquals("handbook", scales.axle(Axle.FRONT).origin());
        assertFalse(JobText.onTwoAxles().car().received().isStated());
    }

    @Test
    void aCarNobodyWeighedHasNoMass() {
        Scales scales = JobText.blank().car().delivered();
        assertTrue(scales.total().amount().isEmpty());
        assertTrue(scales.corner(Corner.LEFT_FRONT).amount().isEmpty());
        assertFalse(scales.hasCorners());
        assertEquals(Optional.empty(), scales.aboard());
        assertEquals("as delivered", scales.words());
    }

    @Test
    void whatWasAboardIsKnownOnlyIfBothAreWritten() {
        var job = JobText.onTwoAxles();
        assertEquals(Optional.of(""), job.car().delivered().aboard());
        job.with("weighings.as-delivered.state", "{ occupants: \"2\", ballast: 20 kg }");
        assertEquals(
                Optional.of("occupants 2, ballast 20 kg"), job.car().delivered().aboard());
        job.with("weighings.as-delivered.state", "{ occupants: \"0\" }");
        assertEquals(Optional.empty(), job.car().delivered().aboard());
    }
}
