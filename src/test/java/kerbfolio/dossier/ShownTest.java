package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import kerbfolio.check.Bound;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Standing;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.quantity.UnitSystem;
import kerbfolio.source.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
    private static final Citation BOOK = new Citation("a book", "1");

    private static Known known(String figure, double expanded) {
        Quantity quantity = Quantity.of(figure);
        double effect = expanded / 2 * quantity.unit().factor();
        return new Known(
                "here",
                "figure",
                quantity,
                new Amount(quantity.si(), effect == 0 ? Map.of() : Map.of("cause", effect)),
                Basis.MEASURED,
                "scales",
                List.of());
    }

    /** A figure the program computed: it has no digits somebody wrote. */
    private static Working computed(double number, double expanded, String unit) {
        var unitOf = Unit.of(unit);
        return Working.fill(Formula.of("y = x")
                        .giving("figure", unit.isEmpty() ? "1" : unit)
                        .with("x", "figure", unit.isEmpty() ? "1" : unit)
                        .from(BOOK)
                        .build())
                .put(
                        "x",
                        new Known(
                                "here",
                                "figure",
                                Quantity.of(number, unitOf),
                                new Amount(
                                        unitOf.toSi(number),
                                        expanded == 0 ? Map.of() : Map.of("cause", expanded / 2 * unitOf.factor())),
                                Basis.MEASURED,
                                "scales",
                                List.of()))
                .work();
    }

    private static Finding finding(Term term, Bound bound, String limit) {
        return new Finding(
                "car",
                term,
                Optional.of(new Limit("set", "key", "limit", bound, Quantity.of(limit), BOOK, Standing.OWN_RULE)),
                List.of());
    }

    private static String large(double number, double expanded, Bound bound, String limit) {
        return Shown.of(finding(computed(number, expanded, "kg"), bound, limit), UnitSystem.SI)
                .large()
                .replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // two digits of uncertainty, rounded up; as many of the figure
                "814.26  | 1.1547 | 814.3 ± 1.2 kg",
                "814.26  | 11.3   | 814 ± 12 kg",
                "814.26  | 113    | 814 ± 113 kg",
                "1.23456 | 0.0123 | 1.235 ± 0.013 kg",
                "5       | 0.1    | 5.00 ± 0.10 kg",
                // half goes to the even digit
                "0.125   | 0.5    | 0.12 ± 0.50 kg",
                // without doubt, four digits
                "12.3456 | 0      | 12.35 kg",
                "1234.56 | 0      | 1235 kg",
                "100     | 0      | 100 kg",
                // never more than six decimals, and no minus before nothing
                "0.0000123456 | 0    | 0.000012 kg",
                "1E-12        | 0    | 0 kg",
                "-1E-12       | 0    | 0 kg",
                "-0.001       | 1.5  | 0.0 ± 1.5 kg",
                "0            | 1E-9 | 0.000000 ± 0.000001 kg"
            })
    void aFigureHasAsManyDigitsAsAreKnown(double number, double expanded, String print) {
        assertEquals(
                print,
                Shown.of(computed(number, expanded, "kg"), UnitSystem.SI)
                        .large()
                        .replace('\u00a0', ' '));
    }

    @Test
    void aMinusIsATrueMinus() {
        assertEquals(
                "\u22126.6 kg",
                Shown.of(computed(-6.6, 0, "kg"), UnitSystem.SI).large().replace('\u00a0', ' '));
        assertEquals(
                "\u22125 kg", Shown.of(known("-5 kg", 0), UnitSystem.SI).large().replace('\u00a0', ' '));
    }

    @Test
    void whatSomebodyWroteKeepsHisDigits() {
        assertEquals(
                "850.00\u00a0kg", Shown.of(known("850.00 kg", 0), UnitSystem.SI).large());
        assertEquals("1.10", Shown.of(known("1.10", 0), UnitSystem.SI).large());
    }

    /** 1874 lb: 850 kg / 0.45359237 (NIST SP 811, B.8) = 1873.9 lb, four digits. */
    @Test
    void bothUnitSystemsStandSideBySide() {
        Shown si = Shown.of(known("850 kg", 0), UnitSystem.SI);
        assertEquals("850\u00a0kg", si.large());
        assertEquals("1874\u00a0lb", si.small());
        Shown us = Shown.of(known("850 kg", 0), UnitSystem.US);
        assertEquals("1874\u00a0lb", us.large());
        assertEquals("850\u00a0kg", us.small());
        assertEquals("", Shown.of(computed(50, 1, "%"), UnitSystem.US).small());
    }

    @Test
    void whatIsMissingIsADash() {
        Shown shown = Shown.of(Absent.unrecorded("here", "mass", "kg"), UnitSystem.SI);
        assertEquals(new Shown("\u2014", "", false), shown);
        assertEquals("\u2014", shown.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "99.96  | 0 | AT_MOST  | 100 kg | 99.96 kg",
                "99.999 | 0 | AT_MOST  | 100 kg | 100.00 kg",
                "100.01 | 0 | AT_MOST  | 100 kg | 100.1 kg",
                "99.999 | 0 | AT_LEAST | 100 kg | 99.99 kg",
                "100.04 | 0 | AT_LEAST | 100 kg | 100.0 kg",
                "-0.04  | 0.01 | AT_LEAST | 0 kg | \u22120.040 ± 0.010 kg"
            })
    void aJudgedFigureIsRoundedTowardTheFailingSide(
            double number, double expanded, Bound bound, String limit, String print) {
        assertEquals(print, large(number, expanded, bound, limit));
    }

    /** What a reader who takes the print at its word concludes. */
    private static Verdict readOffPaper(Shown shown, Shown limit, Bound bound) {
        String[] words =
                shown.large().replace("\u00a0kg", "").replace("\u00a0lb", "").split(" ± ");
        BigDecimal value = decimal(words[0]);
        BigDecimal reach = words.length == 1 ? BigDecimal.ZERO : decimal(words[1]);
        BigDecimal bar = decimal(limit.large().replace("\u00a0kg", "").replace("\u00a0lb", ""));
        BigDecimal inside = bound.isCeiling() ? bar.subtract(value) : value.subtract(bar);
        if (allowed(inside.subtract(reach), bound)) {
            return Verdict.MET;
        }
        return allowed(inside.add(reach), bound) ? Verdict.UNDECIDED : Verdict.NOT_MET;
    }

    private static BigDecimal decimal(String text) {
        return new BigDecimal(text.replace('\u2212', '-'));
    }

    private static boolean allowed(BigDecimal inside, Bound bound) {
        boolean equal = bound == Bound.AT_MOST || bound == Bound.AT_LEAST;
        return inside.signum() > 0 || (equal && inside.signum() == 0);
    }

    /** Nearer to its limit than the last of six decimals a figure cannot be printed. */
    private static final double LAST_DECIMAL = 1e-5;

    @Test
    void thePrintNeverContradictsTheVerdict() {
        var random = new Random(2026);
        int judged = 0;
        while (judged < 3_000) {
            double size = Math.pow(10, random.nextInt(4));
            String limit = BigDecimal.valueOf(random.nextInt(100)).movePointLeft(2 - random.nextInt(4)) + " kg";
            double bar = Quantity.of(limit).number();
            double expanded = random.nextInt(4) == 0 ? 0 : size * Math.pow(10, -3 * random.nextDouble());
            // Near enough to the limit that rounding could tip it.
            double number = bar + (random.nextDouble() - 0.5) * (expanded == 0 ? size / 500 : 3 * expanded);
            double edge = Math.abs(Math.abs(number - bar) - expanded);
            if (edge > LAST_DECIMAL * Math.max(1, bar)) {
                for (Bound bound : Bound.values()) {
                    for (UnitSystem system : UnitSystem.values()) {
                        agree(finding(computed(number, expanded, "kg"), bound, limit), bound, system);
                    }
                }
                judged++;
            }
        }
    }

    private static void agree(Finding finding, Bound bound, UnitSystem system) {
        Shown shown = Shown.of(finding, system);
        Shown bar = Shown.of(finding.limit().orElseThrow(), system);
        String print = shown + " " + bound + " " + bar;
        assertEquals(finding.verdict(), readOffPaper(shown, bar, bound), print);
        assertFalse(print.matches(".*\\.\\d{7}.*"), print);
        assertFalse(print.matches(".*\u2212[0.]+[^0-9.].*"), print);
    }
}
