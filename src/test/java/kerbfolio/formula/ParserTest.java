package kerbfolio.formula;

import static kerbfolio.formula.Trial.fault;
import static kerbfolio.formula.Trial.value;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The grammar, and every text other readers of formulas take in a different sense. Expected values are by hand, with the
 * precedence of printed mathematics (ISO 80000-2).
 */
class ParserTest {
    private static String refused(String text) {
        return fault(() -> Formula.of(text));
    }

    @Test
    void aPowerBindsBeforeALeadingMinus() {
        assertEquals(-9, value("-a^2", "1", "a = 3"));
        assertEquals(9, value("(-a)^2", "1", "a = 3"));
        assertEquals(5, value("9 - 2^2"));
    }

    @Test
    void powersClimbToTheRight() {
        assertEquals(512, value("2^3^2"));
        assertEquals(64, value("(2^3)^2"));
    }

    @Test
    void aPowerMayBeNegative() {
        assertEquals(0.25, value("2^-2"));
        assertEquals(0.0625, value("2^-2^2"));
    }

    @Test
    void equalSignsBindToTheLeft() {
        assertEquals(3, value("10 - 4 - 3"));
        assertEquals(2, value("100/10/5"));
        assertEquals(50, value("100/10*5"));
        assertEquals(9, value("10 - (4 - 3)"));
    }

    @Test
    void productsBindBeforeSumsAndSumsBeforeComparisons() {
        assertEquals(14, value("2 + 3*4"));
        assertEquals(20, value("(2 + 3)*4"));
        assertEquals(1, value("if(1 + 1 >= 2, 1, 0)"));
    }

    @Test
    void aMinusMayFollowASign() {
        assertEquals(-6, value("2*-3"));
        assertEquals(5, value("2 - -3"));
    }

    @Test
    void namesDifferByCase() {
        assertEquals(2, value("R - r", "1", "R = 5", "r = 3"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "R", "C", "T1", "V1", "d36", "V_1'", "V_1''", "E", "e", "PI", "pi", "TRUE", "NULL", "η", "Δ_m", "µ",
                "kN", "sum", "ln", "min", "if", "neg", "A1"
            })
    void noNameIsReserved(String name) {
        assertEquals(14, value(name + "*2", "1", name + " = 7"));
    }

    @Test
    void aPrimeMakesAnotherName() {
        assertEquals(3, value("m_F' - m_F", "kg", "m_F' = 10 kg", "m_F = 7 kg"));
    }

    @Test
    void exponentsOfTenAreNumbersAndNotNames() {
        assertEquals(0.0015, value("1.5e-3"));
        assertEquals(1500, value("1.5E3"));
        assertEquals(2e5, value("2e+5"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "x = 2(a + b); 6",
                "x = (a)(b); 8",
                "x = a b; 7",
                "x = 2a; 6",
                "x = 2 3; 7",
                "x = (a)b; 8",
                "x = a[m]; 6"
            })
    void multiplicationIsAlwaysWritten(String text, int column) {
        assertEquals("`" + text + "`, column " + column + ": nothing may follow here", refused(text));
    }

    @Test
    void aNameBeforeABracketIsAFunctionAndNoProduct() {
        assertEquals("`x = a(b + c)`, column 5: no function `a`", refused("x = a(b + c)"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"log", "LN", "SQRT", "neg", "asin", "round", "DT_NOW", "RANDOM", "Sum", "pow"})
    void anUnknownFunctionIsRefusedByName(String name) {
        assertEquals("`x = " + name + "(2)`, column 5: no function `" + name + "`", refused("x = " + name + "(2)"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"x = a + b = c; 11", "x = a); 6", "x = a[1]; 6", "x = 0x1F; 6", "x = 1.e5; 6", "x = (a, b); 7"})
    void textThatFollowsIsRefusedWithItsColumn(String text, int column) {
        String why = refused(text);
        assertTrue(why.startsWith("`" + text + "`, column " + column + ": "), why);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "x = a·b | 6", "x = a − b | 7", "x = a ≤ b | 7", "x = a² | 6", "x = a ÷ b | 7", "x = 'a' | 5",
                        "x = a & b | 7",
                "x = a.b | 6", "x = \"s\" | 5", "x = a; b | 6", "x = a % b | 7", "x = .5 | 5", "x = _a | 5",
                        "x = 5*[] | 7",
                "x = 5*[m | 7"
            })
    void aForeignSignIsRefusedWithItsColumn(String text, int column) {
        String why = refused(text);
        assertTrue(why.startsWith("`" + text + "`, column " + column + ": "), why);
        assertTrue(why.endsWith("is not of the language"), why);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "x = ; something is missing here",
                "x = a + ; something is missing here",
                "x = *a; expected",
                "x = +a; expected",
                "x = (a; closing bracket",
                "x = sqrt(a; closing bracket",
                "x = sqrt(); expected",
                "x = sqrt(a, b); sqrt takes 1, not 2",
                "x = min(a); min takes 2, not 1",
                "x = if(a, b); if takes 3, not 2",
                "x = min(a, ); expected",
                "x = (); expected"
            })
    void anUnfinishedTextIsRefused(String text, String why) {
        assertTrue(refused(text).contains(why), refused(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a + b", "2x = 3", "a == b", "", "= a", "a > b", "x y = 2"})
    void aFormulaNamesWhatItGives(String text) {
        assertEquals("`" + text + "`: a formula reads `symbol = expression`", refused(text));
    }

    @Test
    void aUnitInBracketsIsOneThisProgramKnows() {
        assertEquals("`x = 5*[furlong]`, column 7: unknown unit `furlong`", refused("x = 5*[furlong]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"°C", "deg C", "°F"})
    void insideAFormulaATemperatureIsInKelvin(String unit) {
        assertEquals(
                "`x = T/[" + unit + "]`, column 7: inside a formula a temperature is in kelvin",
                refused("x = T/[" + unit + "]"));
    }
}
