package kerbfolio.workbook;

import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Unit;

/** Number formats with the decimals a figure deserves: two digits of its uncertainty, or four of its own. */
final class Decimals {
    /** An uncertainty of nothing is a dash: the figure is taken as exact. */
    private static final String NO_REACH = ";-0;\"" + Pen.NOTHING + "\"";

    private Decimals() {}

    /** For a term's number in a unit. */
    static String of(Term term, Unit unit) {
        return term.amount().map(amount -> of(amount, unit)).orElse("0");
    }

    /** For an expanded uncertainty in a unit. */
    static String ofReach(Amount amount, Unit unit) {
        double reach = unit.differenceFromSi(amount.expanded());
        return format(Math.max(0, Notation.decimalsFor(reach))) + NO_REACH;
    }

    /** For a number and what is known of it, both in the same unit. */
    static String of(double number, double reach) {
        int known = Notation.decimalsFor(reach);
        return format(known < 0 ? Notation.decimalsOf(number) : known);
    }

    private static String of(Amount amount, Unit unit) {
        return of(unit.fromSi(amount.si()), unit.differenceFromSi(amount.expanded()));
    }

    private static String format(int decimals) {
        return decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    }
}
