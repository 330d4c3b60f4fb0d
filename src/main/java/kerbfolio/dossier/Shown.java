package kerbfolio.dossier;

import java.math.RoundingMode;
import java.util.Optional;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Unit;
import kerbfolio.quantity.UnitSystem;

/**
 * A figure as it stands on paper: in the job's own units large, in the other system small.
 *
 * @param large value with its expanded uncertainty (k = 2) and unit, or why there is none
 * @param small the value in the other system; empty if both systems share the unit
 * @param isKnown whether there is a value
 */
public record Shown(String large, String small, boolean isKnown) {
    private static final int MOST_DECIMALS = 6;
    public static final Shown NOTHING = new Shown("", "", false);

    /** A figure without a limit, rounded to nearest. */
    public static Shown of(Term term, UnitSystem system) {
        return of(term, system, RoundingMode.HALF_EVEN, Optional.empty());
    }

    /** A finding's figure, rounded toward the failing side, with digits enough that the print agrees with the verdict. */
    public static Shown of(Finding finding, UnitSystem system) {
        return finding.limit()
                .map(limit -> of(
                        finding.result(),
                        system,
                        limit.bound().isCeiling() ? RoundingMode.CEILING : RoundingMode.FLOOR,
                        Optional.of(limit)))
                .orElseGet(() -> of(finding.result(), system));
    }

    private static Shown of(Term term, UnitSystem system, RoundingMode mode, Optional<Limit> limit) {
        if (term.amount().isEmpty()) {
            return new Shown("\u2014", "", false);
        }
        Amount amount = term.amount().get();
        Unit own = system.of(term.unit());
        String large = text(term, amount, own, mode, limit);
        String small = system.otherThan(term.unit())
                .map(other -> number(amount, other, mode) + unit(other))
                .orElse("");
        return new Shown(large, small, true);
    }

    private static String text(Term term, Amount amount, Unit unit, RoundingMode mode, Optional<Limit> limit) {
        double number = unit.fromSi(amount.si());
        double reach = unit.differenceFromSi(amount.expanded());
        if (reach == 0) {
            return exact(term, number, unit, mode) + unit(unit);
        }
        int decimals = Notation.decimalsFor(reach);
        if (limit.isPresent()) {
            decimals = agreeing(
                    number, reach, decimals, unit.fromSi(limit.get().value().si()), mode);
        }
        return Notation.fixed(number, decimals, mode) + " ± " + Notation.fixed(reach, decimals, RoundingMode.CEILING)
                + unit(unit);
    }

    /** A figure somebody wrote keeps the digits he wrote. */
    private static String exact(Term term, double number, Unit unit, RoundingMode mode) {
        if (term instanceof Known known && known.unit().text().equals(unit.text())) {
            return known.quantity().digits().replace('-', '\u2212');
        }
        return Notation.fixed(number, Notation.decimalsOf(number), mode);
    }

    private static String number(Amount amount, Unit unit, RoundingMode mode) {
        double number = unit.fromSi(amount.si());
        int known = Notation.decimalsFor(unit.differenceFromSi(amount.expanded()));
        return Notation.fixed(number, known < 0 ? Notation.decimalsOf(number) : known, mode);
    }

    /** More decimals until the rounded figures fall on the same side of the limit as the exact ones. */
    private static int agreeing(double number, double reach, int from, double limit, RoundingMode mode) {
        for (int decimals = from; decimals < MOST_DECIMALS; decimals++) {
            double shown = parse(Notation.fixed(number, decimals, mode));
            double shownReach = parse(Notation.fixed(reach, decimals, RoundingMode.CEILING));
            if (side(number, reach, limit) == side(shown, shownReach, limit)) {
                return decimals;
            }
        }
        return MOST_DECIMALS;
    }

    private static int side(double number, double reach, double limit) {
        if (number - reach >= limit) {
            return 1;
        }
        return number + reach <= limit ? -1 : 0;
    }

    private static double parse(String text) {
        return Double.parseDouble(text.replace('\u2212', '-'));
    }

    private static String unit(Unit unit) {
        return unit.text().isEmpty() ? "" : "\u00a0" + unit.text();
    }

    @Override
    public String toString() {
        return large;
    }
}
