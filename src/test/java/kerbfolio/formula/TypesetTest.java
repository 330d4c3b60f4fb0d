package kerbfolio.formula;

import static kerbfolio.formula.Trial.begun;
import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.formula;
import static kerbfolio.formula.Trial.measured;
import static kerbfolio.formula.Trial.moved;
import static kerbfolio.formula.Trial.work;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import kerbfolio.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Printed mathematics, shown here as one line: a stacked fraction is {@code [above|below]}, a subscript {@code _(…)}, a
 * superscript {@code ^(…)}, a root {@code √(…)}, and a unit follows a space. Expected lines are written by hand.
 */
class TypesetTest {
    private static String line(Piece piece) {
        String inside =
                String.join("", piece.parts().stream().map(TypesetTest::line).toList());
        return switch (piece.kind()) {
            case TEXT, SYMBOL, NUMBER -> piece.text();
            case UNIT -> " " + piece.text();
            case SUB -> "_(" + inside + ")";
            case SUP -> "^(" + inside + ")";
            case ROOT -> "√(" + inside + ")";
            case FRACTION ->
                "[" + line(piece.parts().get(0)) + "|" + line(piece.parts().get(1)) + "]";
            case GROUP -> inside;
        };
    }

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
        return line(builder.build().printed()).substring("x = ".length());
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
        assertEquals(printed, line(Piece.symbol(name)));
    }

    @Test
    void theResultStandsLeft() {
        Formula formula = Formula.of("Delta_m' = a")
                .giving("change", "kg")
                .with("a", "figure", "kg")
                .from(Trial.SOURCE)
                .build();
        assertEquals("Δ_(m)′ = a", line(formula.printed()));
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
                formula.printedNeeds().stream().map(TypesetTest::line).toList());
    }

    /** 100 kg are 220.46 lb and 2.5 m are 8.202 ft (NIST SP 811:2008, B.8). */
    @Test
    void aSubstitutionPrintsValuesInTheUnitsOfTheJob() {
        Working moment = Working.fill(formula("m*x/L", "kg", "m [kg]", "x [m]", "L [m]"))
                .put("m", exact("100 kg"))
                .put("x", exact("1.25 m"))
                .put("L", exact("2.5 m"))
                .work();
        assertEquals("[100 kg·1.25 m|2.5 m]", line(moment.substituted(UnitSystem.SI)));
        assertEquals("[220.5 lb·4.101 ft|8.202 ft]", line(moment.substituted(UnitSystem.US)));
    }

    @Test
    void whatWasWrittenInTheUnitOfThePrintKeepsItsDigits() {
        Working sum = work("a + b", "kg", "a = 592.0 lb", "b = -2 lb");
        assertEquals("592.0 lb + (−2 lb)", line(sum.substituted(UnitSystem.US)));
    }

    /** ± 1 kg at k = 2 shows one decimal: two significant digits of the uncertainty. */
    @Test
    void anUncertainFigureShowsNoMoreDigitsThanAreKnown() {
        Working twice = Working.fill(formula("2*m", "kg", "m [kg]"))
                .put("m", moved("123.456 lb", Map.of("scale", 0.5)))
                .work();
        assertEquals("2·56.0 kg", line(twice.substituted(UnitSystem.SI)));
    }

    @Test
    void aNegativeValueStandsInBracketsWhereASignStandsBeforeIt() {
        assertEquals(
                "(−3 kg)·4 − (−3 kg)",
                line(work("a*n - a", "kg", "a = -3 kg", "n = 4").substituted(UnitSystem.SI)));
        assertEquals("(−3)^(2)", line(work("a^2", "1", "a = -3").substituted(UnitSystem.SI)));
    }

    @Test
    void aValueWithASolidusInItsUnitStandsInBrackets() {
        Working working = work("v*t", "m", "v = 10 m/s", "t = 2 s");
        assertEquals("(10 m/s)·2 s", line(working.substituted(UnitSystem.SI)));
    }

    @Test
    void aConstantPrintsAsCited() {
        Formula weight = begun("m*g + c", "N")
                .with("m", "mass", "kg")
                .constant("g", 9.80665, "m/s²", Trial.SOURCE)
                .constant("c", -2, "N", Trial.SOURCE)
                .build();
        Working working = Working.fill(weight).put("m", exact("10 kg")).work();
        assertEquals("10 kg·(9.80665 m/s²) + (−2 N)", line(working.substituted(UnitSystem.SI)));
    }

    /** 10·1 + 20·2 = 50 kg·m, 10 + 20 = 30 kg; in pounds and feet 361.7 and 66.14. */
    @Test
    void aSumPrintsItsTotal() {
        Working centre = Working.fill(formula("sum(m*x)/sum(m)", "m", "m[] [kg]", "x[] [m]"))
                .each("m", exact(List.of("10 kg", "20 kg")))
                .each("x", exact(List.of("1 m", "2 m")))
                .work();
        assertEquals("[50 kg·m|30 kg]", line(centre.substituted(UnitSystem.SI)));
        assertEquals("[361.7 lb·ft|66.14 lb]", line(centre.substituted(UnitSystem.US)));
    }

    @Test
    void aSumOfSquaresPrintsItsTotalSquared() {
        Working root = Working.fill(formula("sqrt(sum(u^2))", "kg", "u[] [kg]"))
                .each("u", exact(List.of("3 kg", "4 kg")))
                .work();
        assertEquals("√(25 kg²)", line(root.substituted(UnitSystem.SI)));
    }

    @Test
    void aSumOfBareNumbersHasNoUnit() {
        Working sum = Working.fill(formula("sum(n*k)", "1", "n[] [1]", "k[] [1]"))
                .each("n", exact(List.of("2", "3")))
                .each("k", exact(List.of("5", "7")))
                .work();
        assertEquals("31", line(sum.substituted(UnitSystem.SI)));
    }

    @Test
    void aTemperatureIsSubstitutedOnTheScaleOfTheJob() {
        Working rise = Working.fill(formula("T_1 - T_0", "K", "T_1 [°C]", "T_0 [°C]"))
                .put("T_1", measured("60 °C", "probe", "0.5 K"))
                .put("T_0", measured("20 °C", "probe", "0.5 K"))
                .work();
        assertEquals("60 °C − 20 °C", line(rise.substituted(UnitSystem.SI)));
        assertEquals("140.0 °F − 68.0 °F", line(rise.substituted(UnitSystem.US)));
    }
}
