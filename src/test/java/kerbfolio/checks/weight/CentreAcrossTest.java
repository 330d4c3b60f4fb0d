package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

class CentreAcrossTest {
    /** By hand: (1400·(394 − 420) + 1440·(388 − 398)) / (2·1600) = −15.875 mm, which is to the left. */
    @Test
    void theCentreLiesOnTheHeavierSide() {
        var found = JobText.onFourCorners().found(new CentreAcross());
        assertEquals(-15.875, found.value(), 1e-9);
        assertEquals("mm", found.unit());
        assertEquals(Verdict.NO_LIMIT, found.verdict());
    }

    /** A mirrored car has its centre as far to the other side. */
    @Test
    void aMirroredCarLeansTheOtherWay() {
        var found = JobText.onFourCorners()
                .corners("as-delivered", 394, 420, 388, 398)
                .found(new CentreAcross());
        assertEquals(15.875, found.value(), 1e-9);
    }

    @Test
    void axlesAloneGiveNoCentreAcross() {
        var found = JobText.onTwoAxles().found(new CentreAcross());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(
                List.of(
                        "weighings.as-delivered.corners.left-front",
                        "weighings.as-delivered.corners.right-front",
                        "weighings.as-delivered.corners.left-rear",
                        "weighings.as-delivered.corners.right-rear"),
                found.missing());
    }
}
