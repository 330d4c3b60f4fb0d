package kerbfolio.formula;

import java.util.List;
import java.util.Map;
import kerbfolio.quantity.Dim;
import kerbfolio.quantity.Unit;

/** Reads a formula as a dimension. Run by tests over every formula, so that a start costs nothing. */
final class Dimensions implements Fold<Dim> {
    private final Formula formula;
    /** The text that is read: the formula's own, or one of its conditions. */
    private final String text;

    private Dimensions(Formula formula, String text) {
        this.formula = formula;
        this.text = text;
    }

    static void check(Formula formula) {
        Dim found = formula.tree().read(new Dimensions(formula, formula.text()));
        Dim declared = formula.result().unit().dim();
        if (!found.equals(declared)) {
            throw new FormulaFault(formula.text(), "gives [" + found + "] but declares [" + declared + "]");
        }
        for (Map.Entry<String, Node> need : formula.conditions().entrySet()) {
            if (!(need.getValue() instanceof Node.Apply apply) || apply.op().unitRule() != UnitRule.COMPARED) {
                throw new FormulaFault(formula.text(), "`" + need.getKey() + "` is not a comparison");
            }
            need.getValue().read(new Dimensions(formula, need.getKey()));
        }
    }

    @Override
    public Dim number(String digits) {
        return Dim.NONE;
    }

    @Override
    public Dim unit(Unit unit) {
        return unit.dim();
    }

    @Override
    public Dim symbol(String name) {
        return formula.unitOf(name).dim();
    }

    @Override
    public Dim apply(Op op, List<Dim> operands, Node.Apply at) {
        try {
            return op.unitRule().of(operands, at);
        } catch (ArithmeticException misfit) {
            throw new FormulaFault(text, at.column(), String.valueOf(misfit.getMessage()));
        }
    }
}
