package kerbfolio.formula;

import java.math.RoundingMode;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Reads a filled formula with its causes of doubt: each cause moves all the inputs it touches together by plus and minus
 * its standard effect, and half the difference is its effect on the result. This is JCGM 100:2008, 5.2.2 with
 * correlations of plus or minus one, without a covariance matrix; repeated symbols and chains come out right.
 *
 * @param amount the result, or null if there is none
 * @param refusal why there is none, or null
 * @param flips whether a cause changes which branch of the formula holds
 */
record Doubt(@Nullable Amount amount, @Nullable String refusal, boolean flips) {

    static Doubt refused(String why) {
        return new Doubt(null, why, false);
    }

    static Doubt of(Formula formula, Map<String, List<Term>> inputs) {
        for (Map.Entry<String, Node> need : formula.conditions().entrySet()) {
            if (new Arithmetic(values(formula, inputs)).of(need.getValue()) == 0) {
                return refused(
                        "needs " + need.getKey() + ", which does not hold" + seen(formula, inputs, need.getValue()));
            }
        }
        var centre = new Arithmetic(values(formula, inputs));
        double si = centre.of(formula.tree());
        if (!Double.isFinite(si)) {
            return refused("the formula has no finite result for these figures");
        }
        boolean flips = false;
        var effects = new TreeMap<String, Double>();
        for (String cause : causes(inputs)) {
            var up = new Arithmetic(values(formula, inputs, cause, 1));
            var down = new Arithmetic(values(formula, inputs, cause, -1));
            double effect = (up.of(formula.tree()) - down.of(formula.tree())) / 2;
            if (!Double.isFinite(effect)) {
                return refused("within its uncertainty, " + cause + " leaves the range of the formula");
            }
            effects.put(cause, effect);
            flips |= flips(formula, inputs, cause, centre);
        }
        return new Doubt(new Amount(si, effects), null, flips);
    }

    /** A verdict reaches as far as the expanded uncertainty, so the law must hold as far as that. */
    private static boolean flips(Formula formula, Map<String, List<Term>> inputs, String cause, Arithmetic centre) {
        for (double reach : new double[] {-Amount.COVERAGE, Amount.COVERAGE}) {
            var moved = new Arithmetic(values(formula, inputs, cause, reach));
            moved.of(formula.tree());
            if (!moved.branches().equals(centre.branches())) {
                return true;
            }
        }
        return false;
    }

    private static Set<String> causes(Map<String, List<Term>> inputs) {
        var causes = new TreeSet<String>();
        inputs.values()
                .forEach(terms -> terms.forEach(term -> term.amount()
                        .ifPresent(amount -> causes.addAll(amount.effects().keySet()))));
        return causes;
    }

    /** SI values of every symbol and constant. */
    static Map<String, double[]> values(Formula formula, Map<String, List<Term>> inputs) {
        return values(formula, inputs, null, 0);
    }

    private static Map<String, double[]> values(
            Formula formula, Map<String, List<Term>> inputs, @Nullable String cause, double direction) {
        var values = new HashMap<String, double[]>();
        for (Constant constant : formula.constants()) {
            values.put(constant.symbol(), new double[] {constant.value().si()});
        }
        inputs.forEach((symbol, terms) -> values.put(
                symbol,
                terms.stream()
                        .mapToDouble(term -> moved(term.amount().orElseThrow(), cause, direction))
                        .toArray()));
        return values;
    }

    private static double moved(Amount amount, @Nullable String cause, double direction) {
        return cause == null
                ? amount.si()
                : amount.si() + direction * amount.effects().getOrDefault(cause, 0.0);
    }

    /** The figures a condition looks at, each once: a reader must see why it does not hold. */
    private static String seen(Formula formula, Map<String, List<Term>> inputs, Node condition) {
        var symbols = new HashSet<String>();
        collect(condition, symbols);
        return inputs.entrySet().stream()
                .filter(input -> symbols.contains(input.getKey())
                        && !formula.declared(input.getKey()).each())
                .map(input -> input.getKey() + " = "
                        + shown(input.getValue().get(0).amount().orElseThrow().si(), formula.unitOf(input.getKey())))
                .reduce((a, b) -> a + ", " + b)
                .map(all -> ": " + all)
                .orElse("");
    }

    private static void collect(Node node, Set<String> symbols) {
        if (node instanceof Node.Symbol symbol) {
            symbols.add(symbol.name());
        } else if (node instanceof Node.Apply apply) {
            apply.operands().forEach(operand -> collect(operand, symbols));
        }
    }

    private static String shown(double si, Unit unit) {
        double number = unit.fromSi(si);
        return (Notation.fixed(number, Notation.decimalsOf(number), RoundingMode.HALF_EVEN) + " " + unit).strip();
    }
}
