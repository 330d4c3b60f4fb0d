package kerbfolio.formula;

/** A formula that is wrong as written: a fault of this program, found by its tests and never by a user. */
public final class FormulaFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    FormulaFault(String text, int column, String what) {
        super("`" + text + "`, column " + (column + 1) + ": " + what);
    }

    FormulaFault(String text, String what) {
        super("`" + text + "`: " + what);
    }
}
