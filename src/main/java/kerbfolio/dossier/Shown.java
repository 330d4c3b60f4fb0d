package kerbfolio.dossier;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
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
    private static final int LIMIT_DIGITS = 6;
    private static final double DUST = 1e-12;

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
        if (reach == 0 && term instanceof Limit bar) {
            return bar(bar, unit) + unit(unit);
        }
        if (reach == 0
                && term instanceof Known known
                && known.isWritten()
                && known.unit().text().equals(unit.text())) {
            // A figure somebody wrote keeps the digits he wrote.
            return known.quantity().digits().replace('-', '\u2212') + unit(unit);
        }
        int known = reach == 0 ? Notation.decimalsOf(number) : Notation.decimalsFor(reach);
        int decimals =
                limit.map(l -> agreeing(number, reach, known, l, unit, mode)).orElse(known);
        String doubt = reach == 0 ? "" : " ± " + Notation.fixed(reach, decimals, RoundingMode.CEILING);
        return Notation.fixed(number, decimals, mode) + doubt + unit(unit);
    }

    /** A limit as written; in the other system with digits enough that nothing measured is lost between the two. */
    private static String bar(Limit limit, Unit unit) {
        if (limit.unit().text().equals(unit.text())) {
            return limit.value().digits().replace('-', '\u2212');
        }
        double number = unit.fromSi(limit.value().si());
        int decimals = new BigDecimal(number)
                .round(new MathContext(LIMIT_DIGITS, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .scale();
        return Notation.fixed(number, Math.max(0, Math.min(MOST_DECIMALS, decimals)), RoundingMode.HALF_EVEN);
    }

    private static String number(Amount amount, Unit unit, RoundingMode mode) {
        double number = unit.fromSi(amount.si());
        int known = Notation.decimalsFor(unit.differenceFromSi(amount.expanded()));
        return Notation.fixed(number, known < 0 ? Notation.decimalsOf(number) : known, mode);
    }

    /** More decimals until whoever reads figure and limit off the page comes to the same verdict. */
    private static int agreeing(double number, double reach, int from, Limit limit, Unit unit, RoundingMode mode) {
        Verdict exact = judge(limit, number, reach, unit.fromSi(limit.value().si()));
        double bar = parse(bar(limit, unit));
        for (int decimals = from; decimals < MOST_DECIMALS; decimals++) {
            double shown = parse(Notation.fixed(number, decimals, mode));
            double shownReach = parse(Notation.fixed(reach, decimals, RoundingMode.CEILING));
            if (judge(limit, shown, shownReach, bar) == exact) {
                return decimals;
            }
        }
        return MOST_DECIMALS;
    }

    private static Verdict judge(Limit limit, double number, double reach, double bar) {
        return limit.bound().judge(number, reach, bar, DUST * Math.max(Math.abs(number), Math.abs(bar)));
    }

    private static double parse(String text) {
        return Double.parseDouble(text.replace('\u2212', '-'));
    }

    private static String unit(Unit unit) {
        return unit.text().isEmpty() ? "" : "\u00a0" + unit.text();
    }

    /** A change: what is gained says so. */
    Shown signed() {
        return isKnown ? new Shown(plus(large), small.isEmpty() ? "" : plus(small), true) : this;
    }

    private static String plus(String figure) {
        return Character.isDigit(figure.charAt(0)) && !figure.matches("[0.]+\\D.*") ? "+" + figure : figure;
    }

    @Override
    public String toString() {
        return large;
    }
}
