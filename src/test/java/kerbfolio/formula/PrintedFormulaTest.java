package kerbfolio.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import kerbfolio.formula.Piece.Kind;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is printed is what was computed: every formula of the program is read back from its printed mathematics and worked
 * out by exp4j 0.4.8, on figures drawn at random, and must agree to 1e-9.
 */
class PrintedFormulaTest {
    private static final long SEED = 20260117;
    private static final int DRAWS = 10;

    @TestFactory
    Stream<DynamicTest> whatIsPrintedIsWhatWasComputed() {
        return EveryFormula.ofTheProgram().stream()
                .map(each -> dynamicTest(each.toString(), () -> agrees(each.formula())));
    }

    @Test
    void theWalkFindsTheFormulasOfTheProgram() {
        assertFalse(EveryFormula.ofTheProgram().isEmpty());
    }

    /** The language as a whole, beyond what the trades need so far. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "a - (b - c)",
                "a - b - c",
                "a + (b + c)",
                "a - (b + c)",
                "a/(b*c)",
                "a/b/c",
                "a/(b/c)",
                "a/b*c",
                "a*(b/c)",
                "a*b/c*a",
                "(a + b)^2",
                "(a/b)^2",
                "a^2^b",
                "(a^2)^b",
                "-a^2",
                "(-a)^2",
                "-(a + b)",
                "a - -b",
                "a*-b",
                "a + -b",
                "-a + b",
                "a/-b",
                "-a/b",
                "-(a/b)",
                "a^-2",
                "2^(a/b)",
                "sqrt(a/b*c)",
                "sqrt(a + b)/c",
                "sqrt(a*a)^3",
                "1/(a + 1/(b + 1/c))",
                "ln(a/b)",
                "log10(abs(a))",
                "exp(-a/b)",
                "sin(a)*cos(b) + tan(c)",
                "atan(a/b)",
                "abs(a - b)",
                "abs(a - abs(b))",
                "abs(abs(a) - b)",
                "min(a, max(b, c))",
                "if(a > b, a - b, b - a)",
                "if(a + b >= c, 1/a, 2)",
                "if(a < b, 1, 2) + if(a <= c, 3, 4)",
                "1.5e-3*a",
                "0.0060*a",
                "5*[km/h]/(a*[m/s])",
                "a/[km/h]",
                "(a/[%])^2",
                "a*[N/mm]/[N·m]",
                "[mm²]^2*a",
                "a*(b*[km/h])*c",
                "sum(m)/a - sum(m*x)*b",
                "sum(m)^2 - sum(m^2)",
                "a*sum(x)",
                "sum(m)*sum(x)/a",
                "sqrt(sum(m^2))",
                "sqrt(a/[km/h])",
                "1/(a/[N·m])",
                "(b/(a*[km/h]))^2",
                "1/[mm²]^2 + (a/[N·mm])^2"
            })
    void everyShapeOfTheLanguagePrintsWhatItComputes(String expression) {
        FormulaBuilder builder = Trial.begun(expression, "1");
        for (String symbol : List.of("a", "b", "c")) {
            if (expression.replaceAll("[a-z]{2,}\\d*|\\[.*?]", "").contains(symbol)) {
                builder.with(symbol, "figure", "1");
            }
        }
        for (String list : List.of("m", "x")) {
            if (expression.contains("sum(" + list) || expression.contains("*" + list)) {
                builder.each(list, "entry", "1");
            }
        }
        agrees(builder.build());
    }

    /** Planted: above and below of the stacked fraction of a share, the wrong way round. */
    @Test
    void aFractionPrintedUpsideDownIsNoticed() {
        var reader = new PrintedReader(Map.of("a", new double[] {1}, "b", new double[] {4}));
        assertEquals(0.25, reader.value(fraction("a", "b")));
        assertEquals(4, reader.value(fraction("b", "a")));
    }

    /** Planted: a solidus within a unit, left without its bracket, divides once too often. */
    @Test
    void aUnitWithoutItsBracketIsNoticed() {
        var reader = new PrintedReader(Map.of("v", new double[] {10}));
        var v = Piece.symbol("v");
        var unit = Piece.leaf(Kind.UNIT, "km/h");
        double bracketed = reader.value(group(v, text("/"), text("("), unit, text(")")));
        assertEquals(36, bracketed, 1e-12);
        assertNotEquals(bracketed, reader.value(group(v, text("/"), unit)), 1e-3);
    }

    @Test
    void twoSymbolsThatPrintAlikeAreNoticed() {
        assertThrows(
                AssertionError.class, () -> new PrintedReader(Map.of("eta", new double[] {1}, "η", new double[] {2})));
    }

    private static void agrees(Formula formula) {
        var draw = new Draw(SEED);
        for (int i = 0; i < DRAWS; i++) {
            Working working = draw.that(formula);
            double computed = working.amount().orElseThrow().si();
            double read = reader(working).result(formula.printed());
            assertEquals(
                    computed,
                    read,
                    1e-9 * Math.abs(computed),
                    () -> "printed otherwise than computed: " + working.inputs());
            assertTrue(holds(working));
        }
        for (int i = 0; i < DRAWS; i++) {
            Working working = draw.any(formula);
            assertEquals(holds(working), !working.origin().startsWith("needs "), working::origin);
        }
    }

    private static boolean holds(Working working) {
        return working.formula().printedNeeds().stream()
                .allMatch(need -> reader(working).value(need) == 1);
    }

    private static PrintedReader reader(Working working) {
        var values = new HashMap<String, double[]>();
        working.inputs()
                .forEach((symbol, terms) -> values.put(
                        symbol,
                        terms.stream()
                                .mapToDouble(term -> term.amount().orElseThrow().si())
                                .toArray()));
        for (Constant constant : working.formula().constants()) {
            values.put(constant.symbol(), new double[] {constant.value().si()});
        }
        return new PrintedReader(values);
    }

    private static Piece fraction(String above, String below) {
        return Piece.of(Kind.FRACTION, List.of(Piece.symbol(above), Piece.symbol(below)));
    }

    private static Piece group(Piece... pieces) {
        return Piece.of(Kind.GROUP, List.of(pieces));
    }

    private static Piece text(String text) {
        return Piece.leaf(Kind.TEXT, text);
    }
}
