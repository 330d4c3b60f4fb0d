package kerbfolio.quantity;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A value in SI and what each named cause of doubt does to it: the signed change when that cause moves by one standard
 * uncertainty. Causes are shared by name, so two readings of one instrument move together (JCGM 100:2008, 5.2.2) and a
 * figure used twice cancels where it should.
 *
 * @param si the value, in the coherent SI unit
 * @param effects cause to signed standard effect, in the coherent SI unit
 */
public record Amount(double si, Map<String, Double> effects) {
    /** Coverage factor of every expanded uncertainty this program prints: about 95 % (JCGM 100:2008, 6.3.3). */
    public static final double COVERAGE = 2;

    public Amount {
        effects = Collections.unmodifiableMap(new TreeMap<>(effects));
    }

    public static Amount exact(double si) {
        return new Amount(si, Map.of());
    }

    /** Combined standard uncertainty: the effects of unrelated causes in quadrature (JCGM 100:2008, 5.1.2). */
    public double standardUncertainty() {
        double squares = 0;
        for (double effect : effects.values()) {
            squares += effect * effect;
        }
        return Math.sqrt(squares);
    }

    /** Expanded uncertainty, k = 2. */
    public double expanded() {
        return COVERAGE * standardUncertainty();
    }
}
