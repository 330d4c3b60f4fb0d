package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class CrossWeightTest {
    private static final String DELIVERED = "right front and left rear, as delivered";

    /** By hand: 394 + 398 of 1600 kg. Two corner-balance pages agree on (right front + left rear) / whole. */
    @Test
    void theDiagonalIsRightFrontWithLeftRear() {
        var found = JobText.onFourCorners().found(new CrossWeight(), DELIVERED);
        assertEquals(49.5, found.value(), 1e-9);
        assertEquals("%", found.unit());
        assertEquals(Verdict.NO_LIMIT, found.verdict());
    }

    /** Mirroring the car turns one diagonal into the other. */
    @Test
    void theTwoDiagonalsMakeTheWhole() {
        var random = new Random(20);
        for (int i = 0; i < 20; i++) {
            int lf = 200 + random.nextInt(300);
            int rf = 200 + random.nextInt(300);
            int lr = 200 + random.nextInt(300);
            int rr = 200 + random.nextInt(300);
            var one = JobText.onFourCorners().corners("as-delivered", lf, rf, lr, rr);
            var mirrored = JobText.onFourCorners().corners("as-delivered", rf, lf, rr, lr);
            assertEquals(
                    100,
                    one.found(new CrossWeight(), DELIVERED).value()
                            + mirrored.found(new CrossWeight(), DELIVERED).value(),
                    1e-9);
        }
    }

    @Test
    void aWheelNobodyWeighedGivesNoCrossWeight() {
        var found = JobText.onFourCorners()
                .without("weighings.as-delivered.corners.left-rear")
                .found(new CrossWeight(), DELIVERED);
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("weighings.as-delivered.corners.left-rear"), found.missing());
    }
}
