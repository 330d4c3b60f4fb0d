package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Examination;
import org.junit.jupiter.api.Test;

/** What the voltmeter method finds is the lower rail, whatever the meter: an identity, over circuits solved by Kirchhoff's laws. */
class VoltmeterIsolationTest {
    private static final int BATCHES = 6;
    private static final int CIRCUITS = 100;
    private static final double INSIDE = 0.2;

    /**
     * Voltages of plus pole and chassis against the minus pole: the pack behind its inner resistance feeds the plus pole,
     * conductances lead from plus pole and minus pole to the chassis. Currents at both nodes sum to nothing:
     * (1/r + g)·p - g·c = E/r and -g·p + (g + h)·c = 0, solved by Cramer's rule.
     */
    private static double[] nodes(double pack, double plusLeak, double minusLeak) {
        double a = 1 / INSIDE + plusLeak;
        double d = plusLeak + minusLeak;
        double determinant = a * d - plusLeak * plusLeak;
        double plus = pack / INSIDE * d / determinant;
        double chassis = pack / INSIDE * plusLeak / determinant;
        return new double[] {plus, chassis};
    }

    @Test
    void itIsTheLowerRailInEveryCircuit() {
        var random = new Random(7);
        for (int batch = 0; batch < BATCHES; batch++) {
            JobText job = Confirmed.fourHundredVolts();
            var lower = new double[CIRCUITS];
            var rail = new String[CIRCUITS];
            for (int i = 0; i < CIRCUITS; i++) {
                double plus = 20e3 * Math.pow(250, random.nextDouble());
                double minus = 20e3 * Math.pow(250, random.nextDouble());
                lower[i] = Math.min(plus, minus);
                rail[i] = plus <= minus ? "plus rail" : "minus rail";
                double resistor = lower[i] * (0.2 + 1.3 * random.nextDouble());
                double meter = random.nextBoolean() ? 10e6 : 1e6 * (1 + 30 * random.nextDouble());
                double pack = 362 + 38 * random.nextDouble();
                job.add("readings.isolation", reading("iso-" + i, pack, plus, minus, resistor, meter));
            }
            Examination examination = job.examined(new IsolationResistance());
            for (int i = 0; i < CIRCUITS; i++) {
                var found = new Found(examination.rows().get(i).finding());
                assertEquals("iso-" + i + ", " + rail[i], found.finding().subject());
                assertEquals(lower[i], found.value() * 400, lower[i] / 1000, job.toString());
            }
        }
    }

    private static String reading(String id, double pack, double plus, double minus, double resistor, double meter) {
        double[] open = nodes(pack, 1 / plus, 1 / minus);
        double[] atMinus = nodes(pack, 1 / plus, 1 / minus + 1 / meter);
        double[] atPlus = nodes(pack, 1 / plus + 1 / meter, 1 / minus);
        double minusReads = atMinus[1];
        double plusReads = atPlus[0] - atPlus[1];
        double[] minusWith = nodes(pack, 1 / plus, 1 / minus + 1 / meter + 1 / resistor);
        double[] plusWith = nodes(pack, 1 / plus + 1 / meter + 1 / resistor, 1 / minus);
        double with = minusReads >= plusReads ? minusWith[1] : plusWith[0] - plusWith[1];
        return Confirmed.voltmeter(
                        "front-box",
                        String.format(
                                Locale.ROOT,
                                "pack-voltage: %.6f V, minus-to-chassis: %.6f V, plus-to-chassis: %.6f V,"
                                        + " with-resistor: %.6f V, resistor: %.6f kΩ, meter-resistance: %.6f MΩ",
                                open[0],
                                minusReads,
                                plusReads,
                                with,
                                resistor / 1e3,
                                meter / 1e6))
                .replace("id: iso,", "id: " + id + ",");
    }
}
