package kerbfolio.formula;

import static kerbfolio.formula.Trial.begun;
import static kerbfolio.formula.Trial.formula;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printed mathematics, shown as one line of text by {@link Line}. Expected lines are written by hand. */
class TypesetTest {
    private static String printed(String expression) {
        FormulaBuilder builder = begun(expression, "1");
        for (String symbol : List.of("a", "b", "c")) {
            if (expression.replaceAll("[a-z]{2,}|\\[.*?]", "").contains(symbol)) {
                builder.with(symbol, "figure", "1");
            }
        }
        for (String list : List.of("m", "x")) {
            if (expression.matches(".*[(*]" + list + "[)*^].*")) {
                builder.each(list, "entry", "1");
            }
        }
        return Line.of(builder.build().printed()).substring("x = ".length());
    }

    @ParameterizedTest
    @CsvSource({
        "V_1', V_(1)′",
        "V_1'', V_(1)′′",
        "U_0, U_(0)",
        "m_LF, m_(LF)",
        "R, R",
        "Delta_m, Δ_(m)",
        "alpha_20, α_(20)",
        "omega, ω",
        "η, η",
        "mu, µ",
        "Re, Re",
        "T_amb_max, 'T_(amb,max)'",
        "sigma_v, σ_(v)"
    })
    void aNamePrintsWithItsSubscriptAndPrimes(String name, String printed) {
        assertEquals(printed, Line.of(Piece.symbol(name)));
    }

    @Test
    void theResultStandsLeft() {
        Formula formula = Formula.of("Delta_m' = a")
                .giving("change", "kg")
                .with("a", "figure", "kg")
                .from(Trial.SOURCE)
                .build();
        assertEquals("Δ_(m)′ = a", Line.of(formula.printed()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "a - (b - c); a − (b − c)",
                "a - b - c; a − b − c",
                "a + (b + c); a + b + c",
                "a + (b - c); a + b − c",
                "(a + b)*c; (a + b)·c",
                "a*(b*c); a·b·c",
                "(a + b)^2; (a + b)^(2)",
                "(a*b)^2; (a·b)^(2)",
                "(a^2)^3; (a^(2))^(3)",
                "a^(b + c); a^(b + c)",
                "a^2^3; a^(2^(3))",
                "-a^2; −a^(2)",
                "(-a)^2; (−a)^(2)",
                "-(a + b); −(a + b)",
                "a + -b; a + (−b)",
                "a - -b; a − (−b)",
                "-a + b; −a + b",
                "a*-b; a·(−b)"
            })
    void theBracketsThatMatterAreKeptAndNoOthers(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "a/b; [a|b]",
                "a/(b*c); [a|b·c]",
                "(a + b)/c; [a + b|c]",
                "a/b + b/c; [a|b] + [b|c]",
                "a*(b/c); a·[b|c]",
                "a/b*c; [a|b]·c",
                "-(a/b); −a/b"
            })
    void aDivisionInTheOpenIsStacked(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    /** Brackets, roots and bars do not stretch. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '@',
            value = {
                "(a/b)^2 @ (a/b)^(2)",
                "a^(b/c) @ a^(b/c)",
                "sqrt(a/b) @ √(a/b)",
                "ln(a/b) @ ln(a/b)",
                "a/(b/c) @ [a|b/c]",
                "a/b/c @ [a/b|c]",
                "c*(a/b - 1) @ c·(a/b − 1)",
                "sqrt(a/(b*c)) @ √(a/(b·c))",
                "abs(a/b) @ |a/b|",
                "min(a/b, c) @ min(a/b; c)"
            })
    void aDivisionInsideAnythingHasASolidus(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    /** ISO 80000-1, 7.1.3 (from memory): after a solidus neither a product nor another solidus without a bracket. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "sqrt(a/b*c); √((a/b)·c)",
                "sqrt(a/b/c); √((a/b)/c)",
                "sqrt(a*(b/c)); √(a·(b/c))",
                "sqrt(a/(b/c)); √(a/(b/c))",
                "sqrt(a*b/c); √(a·b/c)",
                "sqrt(a/b + c); √(a/b + c)"
            })
    void aSolidusIsNeverFollowedByAnotherSign(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0*[m]; 0 m", "a + 5*[km/h]; a + 5 km/h", "a/[km/h]; [a| km/h]", "sqrt(a/[km/h]); √(a/( km/h))",
                "(5*[km/h])*a; (5 km/h)·a", "(a/[%])^2; (a/ %)^(2)", "[mm²]^2; ( mm²)^(2)", "sqrt(a/[N·m]); √(a/( N·m))"
            })
    void aUnitStandsBehindItsFigure(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '@',
            quoteCharacter = '~',
            value = {
                "log10(a) @ lg(a)",
                "ln(a)^2 @ ln(a)^(2)",
                "sqrt(a)^2 @ √(a)^(2)",
                "abs(a - b) @ |a − b|",
                "max(a, b) @ max(a; b)",
                "if(a >= b, a, b) @ if(a ≥ b; a; b)",
                "if(a <= b, a, b) @ if(a ≤ b; a; b)",
                "if(a > b, a, b) @ if(a > b; a; b)",
                "sum(m) @ Σm",
                "sum(m*x)/a @ [Σ(m·x)|a]",
                "sum(m^2) @ Σ(m^(2))",
                "sum(m)^2 @ (Σm)^(2)",
                "a*sum(m) @ a·Σm"
            })
    void functionsAndSumsHaveTheSignsOfTheTextbook(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"0.0060*a; 0.0060·a", "1.5e-3*a; 0.0015·a", "1E3*a; 1000·a"})
    void aNumberPrintsAsWrittenButWithoutAnExponent(String expression, String line) {
        assertEquals(line, printed(expression));
    }

    @Test
    void aConditionPrintsOnOneLine() {
        Formula formula = begun("m", "kg")
                .with("m", "axle", "kg")
                .with("m_u", "wheel", "kg")
                .needs("m/m_u >= 2")
                .needs("m > 0*[kg]")
                .build();
        assertEquals(
                List.of("m/m_(u) ≥ 2", "m > 0 kg"),
                formula.printedNeeds().stream().map(Line::of).toList());
    }
}
