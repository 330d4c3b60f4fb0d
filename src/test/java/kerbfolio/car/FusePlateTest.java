package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerbfolio.Found;
import kerbfolio.TractionText;
import kerbfolio.formula.Term;
import org.junit.jupiter.api.Test;

/** Expected times: a straight line on logarithmic paper from 100 A, 10 s to 1000 A, 0.1 s halves the exponent midway. */
class FusePlateTest {
    private static final String DRAWN = "curve: [ { current: 700 A, time: 2 s }, { current: 6000 A, time: 1 ms } ]";

    private static Term time(String curve, double amperes) {
        Car car =
                TractionText.sound().alter("parts", "front-fuse", DRAWN, curve).car();
        return car.fuse(car.circuit().part("front-fuse").orElseThrow())
                .meltingTime(Evidence.solved("", "current", amperes, "A", ""));
    }

    private static final String LINE = "curve: [ { current: 1000 A, time: 100 ms }, { current: 100 A, time: 10 s } ]";

    @Test
    void betweenPointsTheCurveIsStraightOnLogarithmicPaper() {
        assertEquals(10, Found.value(time(LINE, 100)), 1e-9);
        assertEquals(1, Found.value(time(LINE, Math.sqrt(100_000))), 1e-9);
        assertEquals(0.1, Found.value(time(LINE, 1000)), 1e-9);
    }

    @Test
    void beyondTheLastPointItsTimeHoldsAndBeforeTheFirstNothingDoes() {
        assertEquals(0.1, Found.value(time(LINE, 20_000)), 1e-9);
        assertTrue(time(LINE, 99).amount().isEmpty());
        assertTrue(time("curve: [ ]", 1000).amount().isEmpty());
    }
}
