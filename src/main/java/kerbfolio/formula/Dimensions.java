package kerbfolio.formula;

import java.util.List;
import java.util.Map;
import kerbfolio.quantity.Dim;
import kerbfolio.quantity.Unit;

/** Reads a formula as a dimension. Run by tests over every formula, so that a start costs nothing. */
final class Dimensions implements Fold<Dim> {
    private final Formula formula;

    private Dimensions(Formula formula) {
        this.formula = formula;
    }

    static void check(Formula formula) {
        var fold = new Dimensions(formula);
        Dim found = formula.tree().read(fold);
        Dim declared = formula.result().unit().dim();
        if (!found.equals(declared)) {
            throw new FormulaFault(formula.text(), "gives [" + found + "] but declares [" + declared + "]");
        }
        for (Map.Entry<String, Node> need : formula.conditions().entrySet()) {
            if (!(need.getValue() instanceof Node.Apply apply) || apply.op().unitRule() != UnitRule.COMPARED) {
                throw new FormulaFault(formula.text(), "`" + need.getKey() + "` is not a comparison");
            }
            need.getValue().read(fold);
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
            throw new FormulaFault(formula.text(), at.column(), String.valueOf(misfit.getMessage()));
        }
    }
}
