package kerbfolio.formula;

import static kerbfolio.formula.Trial.begun;
import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.formula;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A formula as a spreadsheet cell, worked out by the evaluator of Apache POI: a second engine that must agree to 1e-12. */
class CellFormTest {
    private static final long SEED = 20260118;
    private static final int DRAWS = 10;

    private static void agrees(Formula formula) {
        var draw = new Draw(SEED);
        for (int i = 0; i < DRAWS; i++) {
            Working working = draw.that(formula);
            double si = working.amount().orElseThrow().si();
            var sheet = new CellSheet(working);
            assertEquals(si, working.unit().toSi(sheet.result()), 1e-12 * Math.abs(si), sheet::toString);
            assertEquals(formula.needs().stream().map(need -> 1.0).toList(), sheet.needs());
        }
        for (int i = 0; i < DRAWS; i++) {
            Working working = draw.any(formula);
            boolean hold = new CellSheet(working).needs().stream().allMatch(need -> need == 1);
            assertEquals(hold, !working.origin().startsWith("needs "), working::origin);
        }
    }

    @TestFactory
    Stream<DynamicTest> everyFormulaOfTheProgramComesOutAlikeInACell() {
        return EveryFormula.ofTheProgram().stream()
                .map(each -> dynamicTest(each.toString(), () -> agrees(each.formula())));
    }

    /** Spreadsheet engines disagree on -2^2 and 2^3^2, so every bracket is written. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "-a^2; (-(A1^2))",
                "2^3^2; (2^(3^2))",
                "(2^3)^2; ((2^3)^2)",
                "2^-2; (2^(-2))",
                "(-a)^2; ((-A1)^2)",
                "a - (a - 1); (A1-(A1-1))",
                "a/(a*a); (A1/(A1*A1))",
                "1e-6*a; (1E-6*A1)",
                "min(a, 0.5); MIN(A1,0.5)",
                "if(a > 1, a, 2); IF(IF(A1>1,1,0)<>0,A1,2)",
                "ln(a) + log10(a); (LN(A1)+LOG10(A1))"
            })
    void aCellIsFullyBracketed(String expression, String cell) {
        FormulaBuilder builder = begun(expression, "1");
        Formula formula =
                expression.contains("a") ? builder.with("a", "figure", "1").build() : builder.build();
        assertEquals(cell, formula.cell(symbol -> "A1"));
    }

    @Test
    void cellsAreNamedByAddressWhateverTheSymbolIs() {
        Formula formula = formula("R*C*T1 + V_1'", "1", "R [1]", "C [1]", "T1 [1]", "V_1' [1]");
        assertEquals("(((B2*C2)*D2)+E2)", formula.cell(symbol -> switch (symbol) {
            case "R" -> "B2";
            case "C" -> "C2";
            case "T1" -> "D2";
            default -> "E2";
        }));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "a [kg]; kg; A1",
                "a [g]; kg; (A1*0.001)",
                "a [kg]; g; (A1/0.001)",
                "a [µF]; µF; ((A1*0.000001)/0.000001)",
                "a [°C]; K; (A1+273.15)",
                "a [K]; °C; (A1-273.15)"
            })
    void aUnitScalesACellOnlyWhereItHasAFactorOrAnOffset(String symbol, String unit, String cell) {
        assertEquals(cell, formula("a", unit, symbol).cell(name -> "A1"));
    }

    /** 212 °F are 100 °C: NIST SP 811:2008, B.8. */
    @Test
    void fahrenheitGoesThroughACellBothWays() {
        Working celsius = Trial.work("T", "°C", "T = 212 °F");
        assertEquals(100, new CellSheet(celsius).result(), 1e-12);
        Working fahrenheit = Trial.work("T", "°F", "T = 100 °C");
        assertEquals(212, new CellSheet(fahrenheit).result(), 1e-12);
    }

    /** One engine in use computes SUMPRODUCT(a*b) and SUMPRODUCT(a^2) wrongly and without an error. */
    @Test
    void aSumUsesTheFormsEveryEngineComputesAlike() {
        assertEquals("SUM(A1:A3)", formula("sum(m)", "kg", "m[] [kg]").cell(symbol -> "A1:A3"));
        assertEquals(
                "SUMPRODUCT(m:m,x:x)",
                formula("sum(m*x)", "kg·m", "m[] [kg]", "x[] [m]").cell(symbol -> symbol + ":" + symbol));
        assertEquals("SUMSQ(A1:A3)", formula("sum(m^2)", "kg²", "m[] [kg]").cell(symbol -> "A1:A3"));
    }

    /** 1·4 + 2·5 + 3·6 = 32 and 1 + 4 + 9 = 14, by hand; of the entries in pounds, each is brought to SI first. */
    @Test
    void sumsComeOutAlikeInACell() {
        var m = exact(List.of("1 kg", "2 kg", "3 kg"));
        var x = exact(List.of("4 m", "5 m", "6 m"));
        Formula products = formula("sum(m*x)", "kg·m", "m[] [kg]", "x[] [m]");
        Formula squares = formula("sum(m^2)", "kg²", "m[] [kg]");
        assertEquals(
                32,
                new CellSheet(Working.fill(products).each("m", m).each("x", x).work()).result());
        assertEquals(14, new CellSheet(Working.fill(squares).each("m", m).work()).result());
        Working pounds = Working.fill(formula("sum(m)", "lb", "m[] [lb]"))
                .each("m", exact(List.of("1 lb", "2 lb")))
                .work();
        assertEquals(3, new CellSheet(pounds).result(), 1e-12);
    }

    @Test
    void aConstantStandsInTheCellInSi() {
        Formula formula = begun("a*l + c", "mm")
                .with("a", "figure", "1")
                .constant("l", 127, "mm", Trial.SOURCE)
                .constant("c", -1, "m", Trial.SOURCE)
                .build();
        assertEquals("(((A1*0.127)+(-1))/0.001)", formula.cell(symbol -> "A1"));
    }

    @Test
    void aConditionIsACellOfOneOrNought() {
        Formula formula = begun("a", "1")
                .with("a", "figure", "1")
                .with("v", "speed", "km/h")
                .needs("a >= 2")
                .needs("v < 210*[km/h]")
                .build();
        assertEquals(
                List.of("IF(A1>=2,1,0)", "IF((A1*0.2777777777777778)<(210*0.2777777777777778),1,0)"),
                formula.cellNeeds(symbol -> "A1"));
    }

    /** The language as a whole, beyond what the trades need so far. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "-a^2 + b",
                "2^3^2*a",
                "a^-2",
                "a^(b/10)",
                "a - (b - 1)",
                "a/(a*b)",
                "a/b/a",
                "-(a + b)",
                "a - -b",
                "(a + b)^2",
                "sqrt(a)*ln(a) + log10(b)",
                "exp(-a/100)*sin(b)*cos(a)",
                "tan(a) + atan(b)",
                "abs(a - b)",
                "min(a, b) + max(a, b)",
                "if(a > b, a, b) - if(a < b, 2, 3)",
                "if(a >= b, 1, 2)*if(a <= b, 3, 4)",
                "a*5*[km/h]/[m/s] + b*[%]"
            })
    void everyOperatorComesOutAlikeInACell(String expression) {
        agrees(
                expression.replaceAll("[a-z]{2,}|\\[.*?]", "").contains("b")
                        ? formula(expression, "1", "a [1]", "b [1]")
                        : formula(expression, "1", "a [1]"));
    }

    @Test
    void unitsWithFactorsAndOffsetsComeOutAlikeInACell() {
        agrees(formula("R*C*ln(U_0/U_s)", "min", "R [kΩ]", "C [µF]", "U_0 [V]", "U_s [kV]"));
        agrees(formula("alpha*(T - T_0)*L", "in", "alpha [1/K]", "T [°F]", "T_0 [°C]", "L [ft]"));
        agrees(formula("sum(m*x)/sum(m)", "ft", "m[] [lb]", "x[] [in]"));
        agrees(formula("sqrt(sum(u^2))", "%", "u[] [%]"));
        agrees(formula("sin(theta)/phi", "%", "theta [°]", "phi [rad]"));
    }
}
