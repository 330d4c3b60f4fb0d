package kerbfolio.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import kerbfolio.quantity.Unit;

/** Reads a formula as a number in SI. A list is an array; anything else an array of one. */
final class Arithmetic implements Fold<double[]> {
    private final Map<String, double[]> values;
    private final List<Boolean> branches = new ArrayList<>();

    /** @param values SI values of every symbol and constant */
    Arithmetic(Map<String, double[]> values) {
        this.values = values;
    }

    double of(Node node) {
        return node.read(this)[0];
    }

    /** Which way every min, max, if, abs and comparison went, in order: two runs that differ here took different laws. */
    List<Boolean> branches() {
        return branches;
    }

    @Override
    public double[] number(String digits) {
        return new double[] {Double.parseDouble(digits)};
    }

    @Override
    public double[] unit(Unit unit) {
        return new double[] {unit.factor()};
    }

    @Override
    public double[] symbol(String name) {
        double[] value = values.get(name);
        if (value == null) {
            throw new IllegalStateException("no value for `" + name + "`");
        }
        return value;
    }

    @Override
    public double[] apply(Op op, List<double[]> operands, Node.Apply at) {
        if (op == Op.SUM) {
            return new double[] {op.of(operands.get(0))};
        }
        if (op == Op.MULTIPLY && operands.get(0).length != operands.get(1).length) {
            throw new IllegalArgumentException("two lists of unequal length are multiplied");
        }
        int length = operands.stream()
                .mapToInt(x -> x.length)
                .filter(n -> n != 1)
                .findFirst()
                .orElse(1);
        var result = new double[length];
        var row = new double[operands.size()];
        for (int i = 0; i < length; i++) {
            for (int k = 0; k < row.length; k++) {
                double[] operand = operands.get(k);
                row[k] = operand[operand.length == 1 ? 0 : i];
            }
            result[i] = op.of(row);
            note(op, row);
        }
        return result;
    }

    private void note(Op op, double[] x) {
        if (op.branches()) {
            branches.add(
                    switch (op) {
                        case IF -> x[0] != 0;
                        case ABS -> x[0] < 0;
                        default -> x[0] < x[1];
                    });
        }
    }
}
