package kerbfolio.formula;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Unit;

/**
 * Reads a formula as a spreadsheet expression. Every bracket is written out, because spreadsheet engines disagree on
 * {@code -2^2} and {@code 2^3^2}; cells are named by address only, because R, C or T1 are no legal names there.
 */
final class CellForm implements Fold<String> {
    private final Formula formula;
    private final UnaryOperator<String> address;

    private CellForm(Formula formula, UnaryOperator<String> address) {
        this.formula = formula;
        this.address = address;
    }

    static String of(Formula formula, UnaryOperator<String> address) {
        String si = formula.tree().read(new CellForm(formula, address));
        Unit unit = formula.result().unit();
        String shifted = unit.offset() == 0 ? si : "(" + si + "-" + literal(unit.offset()) + ")";
        return unit.factor() == 1 ? shifted : "(" + shifted + "/" + literal(unit.factor()) + ")";
    }

    /** A condition of the formula, 1 or 0. */
    static String of(Formula formula, Node condition, UnaryOperator<String> address) {
        return condition.read(new CellForm(formula, address));
    }

    /** A cell in {@code unit}, brought to SI. */
    static String toSi(String cell, Unit unit) {
        String scaled = unit.factor() == 1 ? cell : "(" + cell + "*" + literal(unit.factor()) + ")";
        return unit.offset() == 0 ? scaled : "(" + scaled + "+" + literal(unit.offset()) + ")";
    }

    @Override
    public String number(String digits) {
        return digits.toUpperCase(Locale.ROOT);
    }

    @Override
    public String unit(Unit unit) {
        return literal(unit.factor());
    }

    @Override
    public String symbol(String name) {
        if (formula.isConstant(name)) {
            return literal(formula.constant(name).value().si());
        }
        Declared declared = formula.declared(name);
        String cell = address.apply(name);
        return declared.each() ? cell : toSi(cell, declared.unit());
    }

    @Override
    public String apply(Op op, List<String> operands, Node.Apply at) {
        if (op == Op.SUM && at.operands().get(0) instanceof Node.Apply inner) {
            return sumOf(inner);
        }
        return String.format(Locale.ROOT, op.cell(), operands.toArray());
    }

    /** SUMPRODUCT(a,b) and SUMSQ(a): with an expression inside, one engine in use returns a wrong sum without an error. */
    private String sumOf(Node.Apply inner) {
        String first = inner.operands().get(0).read(this);
        return inner.op() == Op.POWER
                ? "SUMSQ(" + first + ")"
                : "SUMPRODUCT(" + first + "," + inner.operands().get(1).read(this) + ")";
    }

    private static String literal(double value) {
        String digits = Notation.plain(value);
        return value < 0 ? "(" + digits + ")" : digits;
    }
}
