package kerbfolio.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Unit;

/** Number formats with the decimals a figure deserves: two digits of its uncertainty, or five of its own. */
final class Decimals {
    /** An uncertainty of nothing is a dash: the figure is taken as exact. */
    private static final String NO_REACH = ";-0;\"" + Pen.NOTHING + "\"";

    private static final int SIGNIFICANT = 5;
    private static final int MOST = 6;

    /** What is smaller is dust of the arithmetic, or too small to be read in the unit at hand. */
    private static final double SMALLEST = 5e-6;

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
        return format(known < 0 ? own(number) : known);
    }

    private static String of(Amount amount, Unit unit) {
        return of(unit.fromSi(amount.si()), unit.differenceFromSi(amount.expanded()));
    }

    private static int own(double number) {
        double size = Math.abs(number);
        if (size < SMALLEST) {
            return 0;
        }
        int wanted = Math.max(0, SIGNIFICANT - 1 - (int) Math.floor(Math.log10(size)));
        int needed = new BigDecimal(number)
                .round(new MathContext(SIGNIFICANT))
                .stripTrailingZeros()
                .scale();
        return Math.max(0, Math.min(Math.min(wanted, needed), MOST));
    }

    private static String format(int decimals) {
        return decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    }
}
