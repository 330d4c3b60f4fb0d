package kerbfolio.formula;

import java.util.Map;
import net.objecthunter.exp4j.ExpressionBuilder;
import net.objecthunter.exp4j.function.Function;
import net.objecthunter.exp4j.operator.Operator;

/** An evaluator that knows nothing of this program: exp4j 0.4.8, with the few functions it lacks. */
final class Arithmetician {
    private static final Function[] FUNCTIONS = {
        function("ln", 1, x -> Math.log(x[0])),
        function("lg", 1, x -> Math.log10(x[0])),
        function("least", 2, x -> Math.min(x[0], x[1])),
        function("most", 2, x -> Math.max(x[0], x[1])),
        function("choose", 3, x -> x[0] != 0 ? x[1] : x[2])
    };

    private static final Operator[] COMPARISONS = {
        comparison(">", x -> x[0] > x[1]),
        comparison("<", x -> x[0] < x[1]),
        comparison(">=", x -> x[0] >= x[1]),
        comparison("<=", x -> x[0] <= x[1])
    };

    private interface Rule<T> {
        T of(double... x);
    }

    private Arithmetician() {}

    /** The value of an expression; products are always written. */
    static double value(String text, Map<String, Double> variables) {
        return new ExpressionBuilder(text)
                .functions(FUNCTIONS)
                .operator(COMPARISONS)
                .variables(variables.keySet())
                .implicitMultiplication(false)
                .build()
                .setVariables(variables)
                .evaluate();
    }

    private static Function function(String name, int operands, Rule<Double> rule) {
        return new Function(name, operands) {
            @Override
            public double apply(double... x) {
                return rule.of(x);
            }
        };
    }

    private static Operator comparison(String sign, Rule<Boolean> rule) {
        return new Operator(sign, 2, true, Operator.PRECEDENCE_ADDITION - 1) {
            @Override
            public double apply(double... x) {
                return rule.of(x) ? 1 : 0;
            }
        };
    }
}
