package kerbfolio.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Citation;
import org.junit.jupiter.api.Test;

/**
 * What the rule of the whole expanded uncertainty does to the risk of passing what should not pass, on the examples of JCGM
 * 106:2012. The program computes no probabilities; the integrals here do.
 */
class GuardBandTest {
    /** Sum of midpoints; every limit and every edge of a guard band below lies on a border of two steps. */
    private static double integral(double from, double to, double step, DoubleUnaryOperator f) {
        double sum = 0;
        long steps = Math.round((to - from) / step);
        for (long i = 0; i < steps; i++) {
            sum += f.applyAsDouble(from + (i + 0.5) * step) * step;
        }
        return sum;
    }

    private static double normal(double x, double mean, double u) {
        double z = (x - mean) / u;
        return Math.exp(-z * z / 2) / (u * Math.sqrt(2 * Math.PI));
    }

    /** Whether a reading of a standard uncertainty is met against an upper limit. */
    private static DoublePredicate met(String limit, double u) {
        var judge = new Limit(
                "set",
                "key",
                "upper limit",
                Bound.AT_MOST,
                Quantity.of(limit),
                new Citation("JCGM 106:2012", "9.5.4"),
                Standing.OWN_RULE);
        return reading -> judge.judge(new Known(
                        "here",
                        "reading",
                        Quantity.of(reading, judge.unit()),
                        new Amount(reading, Map.of("instrument", u)),
                        Basis.MEASURED,
                        "instrument",
                        List.of()))
                == Verdict.MET;
    }

    /** Radial play of bearings in µm: gamma distribution, shape 4, rate 4. */
    private static double bearings(double y) {
        return y <= 0 ? 0 : Math.pow(4, 4) * Math.pow(y, 3) * Math.exp(-4 * y) / 6;
    }

    /** Share of bearings above 2 µm that a reading of u = 0.25 µm passes. */
    private static double consumersRisk(DoublePredicate accepted) {
        return integral(
                0,
                2.5,
                0.005,
                reading ->
                        accepted.test(reading) ? integral(2, 8, 0.01, y -> bearings(y) * normal(reading, y, 0.25)) : 0);
    }

    /** Printed by a program of statistics for this example of JCGM 106:2012, 9.5.4: 0.04238 and 0.00802. */
    @Test
    void theExampleOfTheBearingsIsReproduced() {
        assertEquals(0.04238, integral(2, 20, 0.005, GuardBandTest::bearings), 0.000005);
        // A reading taken for exact is the simple acceptance of the example.
        assertEquals(0.00802, consumersRisk(met("2", 0)), 0.000005);
    }

    @Test
    void theWholeExpandedUncertaintyLowersTheRiskOfSimpleAcceptance() {
        double guarded = consumersRisk(met("2", 0.25));
        assertTrue(guarded > 0 && guarded < 0.00802 / 10, "risk " + guarded);
    }

    /** A thing exactly at its limit is passed with the probability 1 − Φ(2) = 2.28 %; 50 % if its doubt were left out. */
    @Test
    void aThingAtItsLimitIsSeldomPassed() {
        assertEquals(0.0228, passed(met("10", 0.25)), 0.00005);
        assertEquals(0.5, passed(met("10", 0)), 0.00005);
    }

    private static double passed(DoublePredicate accepted) {
        return integral(8, 12, 0.0005, reading -> accepted.test(reading) ? normal(reading, 10, 0.25) : 0);
    }

    /**
     * The breakdown voltage of a diode in JCGM 106:2012 (from memory): at most −5.40 V, read as −5.47 V with u = 0.05 V,
     * conforms with a probability of Φ(1.40) = 0.919. That is not enough to be decided here.
     */
    @Test
    void nineInTenIsNotEnough() {
        assertEquals(0.919, integral(-6, -5.4, 0.001, v -> normal(v, -5.47, 0.05)), 0.0005);
        assertFalse(met("-5.40 V", 0.05).test(-5.47));
        assertTrue(met("-5.40 V", 0.035).test(-5.47));
    }
}
