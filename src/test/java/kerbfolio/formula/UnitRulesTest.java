package kerbfolio.formula;

import static kerbfolio.formula.Trial.begun;
import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.fault;
import static kerbfolio.formula.Trial.formula;
import static kerbfolio.formula.Trial.value;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the language asks of units. Values without another source beside them are worked by hand. */
class UnitRulesTest {
    private static String misfit(String expression, String unit, String... symbols) {
        Formula formula = formula(expression, unit, symbols);
        return fault(formula::checkUnits);
    }

    private static void fits(String expression, String unit, String... symbols) {
        Formula formula = formula(expression, unit, symbols);
        assertDoesNotThrow(formula::checkUnits);
    }

    @Test
    void theLogarithmOfAVoltageIsRefusedWithItsColumn() {
        assertEquals(
                "`x = R*C*ln(U_0)`, column 9: the argument of ln has the unit [kg·m²/(s³·A)]",
                misfit("R*C*ln(U_0)", "s", "R [kΩ]", "C [µF]", "U_0 [V]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"log10", "exp", "sin", "cos", "tan", "atan"})
    void theArgumentOfSuchAFunctionHasNoUnit(String function) {
        assertEquals(
                "`x = " + function + "(a)`, column 5: the argument of " + function + " has the unit [m]",
                misfit(function + "(a)", "1", "a [m]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a + t", "a - t", "min(a, t)", "max(a, t)", "if(1, a, t)"})
    void metresAndSecondsDoNotAdd(String expression) {
        String why = misfit(expression, "m", "a [m]", "t [s]");
        assertTrue(why.endsWith(": [m] with [s]"), why);
    }

    @Test
    void comparedThingsAreOfOneKind() {
        assertEquals(
                "`x = if(a > t, 1, 0)`, column 10: [m] with [s]", misfit("if(a > t, 1, 0)", "1", "a [m]", "t [s]"));
    }

    @Test
    void aBareNoughtIsNoLength() {
        assertEquals("`x = max(0, a)`, column 5: [] with [m]", misfit("max(0, a)", "m", "a [m]"));
        assertEquals(0, value("max(0*[m], a)", "m", "a = -2 m"));
    }

    /** UN R13-H, type 0 test: s = 0.1·v + 0.0060·v² with v in km/h gives 70 m at 100 km/h (constants from memory). */
    @Test
    void anEmpiricalLawCarriesItsUnitsInBrackets() {
        assertEquals(70, value("0.1*[m]*(v/[km/h]) + 0.0060*[m]*(v/[km/h])^2", "m", "v = 100 km/h"), 1e-12);
        assertEquals("gives [m/s] but declares [m]", after(misfit("0.1*v", "m", "v [km/h]")));
    }

    /** IEC 61851-1, annex A: 0.6 A for each percent of the duty cycle, so 50 % is 30 A (from memory). */
    @Test
    void aLawInPercentDividesByThePercent() {
        assertEquals(30, value("0.6*[A]*d/[%]", "A", "d = 50 %"), 1e-12);
    }

    @Test
    void percentIsAUnitOfAHundredth() {
        assertEquals(25, value("a/b", "%", "a = 1 kg", "b = 4 kg"), 1e-12);
        assertEquals(0.25, value("a/b", "1", "a = 25 %", "b = 1"), 1e-12);
    }

    /** 2π·50/s; 100 N·m at 3000 r/min are 31.4159 kW. */
    @Test
    void revolutionsPerMinuteAreRadiansPerSecond() {
        assertEquals(31.41592653589793, value("M*omega", "kW", "M = 100 N·m", "omega = 3000 rpm"), 1e-12);
    }

    @Test
    void anAngleIsInRadiansOnceInside() {
        assertEquals(0.5, value("sin(theta)", "1", "theta = 30 °"), 1e-15);
        assertEquals(-0.98803162409286, value("sin(theta)", "1", "theta = 30"), 1e-13);
        assertEquals(45, value("atan(a)", "°", "a = 1"), 1e-13);
    }

    /** sin 30° = 1/2, cos 60° = 1/2, tan 45° = 1, ln e = 1, lg 1000 = 3. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "sin(30*[°]); 0.5", "cos(60*[°]); 0.5", "tan(45*[°]); 1", "ln(exp(1)); 1", "log10(1000); 3",
                        "sqrt(16); 4",
                "abs(-3); 3", "abs(3); 3", "min(2, 3); 2", "max(2, 3); 3", "if(2 > 3, 4, 5); 5", "if(2 < 3, 4, 5); 4",
                "if(3 >= 3, 4, 5); 4", "if(3 <= 2, 4, 5); 5", "4*atan(1); 3.141592653589793"
            })
    void theFunctionsAreThoseOfTheTextbook(String expression, double expected) {
        assertEquals(expected, value(expression), 1e-14 * expected);
    }

    /** A Celsius law subtracts a cited 273.15 K and divides by the kelvin: here t/°C = 20 gives 20. */
    @Test
    void aTemperatureIsInKelvinInside() {
        Formula law = begun("(T - T_0)/[K]", "1")
                .with("T", "temperature", "°C")
                .constant("T_0", 273.15, "K", Trial.SOURCE)
                .build();
        law.checkUnits();
        Working working = Working.fill(law).put("T", exact("20 °C")).work();
        assertEquals(20, Trial.in(working), 1e-12);
    }

    @Test
    void theDifferenceOfTwoTemperaturesIsAPlainDifference() {
        assertEquals(40, value("T_max - T_amb", "K", "T_max = 60 °C", "T_amb = 68 °F"), 1e-12);
    }

    @Test
    void aResultMayBeOnAScaleWithOffset() {
        assertEquals(122, value("T", "°F", "T = 50 °C"), 1e-12);
    }

    /** IEC 60364-5-54, 543.1.2 (from memory): S = I·√t/k; 1000 A for 1 s and k = 143 A·s^0.5/mm² are 1000/143 mm². */
    @Test
    void anExponentMayBeAHalf() {
        assertEquals(1000.0 / 143, value("I*sqrt(t)/k", "mm²", "I = 1000 A", "t = 1 s", "k = 143 A·s^0.5/mm²"), 1e-12);
        fits("sqrt(a)", "m^0.5", "a [m]");
        fits("a^1.5", "m^1.5", "a [m]");
    }

    @Test
    void anExponentFinerThanAHalfIsRefused() {
        assertEquals("`x = H^1.852`, column 6: an exponent finer than one half", misfit("H^1.852", "1", "H [m]"));
        assertEquals("`x = a^0.25`, column 6: an exponent finer than one half", misfit("a^0.25", "1", "a [m]"));
        assertEquals(
                "`x = sqrt(sqrt(a))`, column 5: an exponent finer than one half",
                misfit("sqrt(sqrt(a))", "1", "a [m]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a^n", "a^(1/2)", "a^(1 + 1)", "a^sqrt(4)"})
    void thePowerOfAFigureWithAUnitIsAPlainNumber(String expression) {
        Formula formula = expression.contains("n")
                ? formula(expression, "m", "a [m]", "n [1]")
                : formula(expression, "m", "a [m]");
        String why = fault(formula::checkUnits);
        assertTrue(why.endsWith(", column 6: the power of a figure with a unit is a plain number"), why);
    }

    @Test
    void theSignOfAPlainPowerMayBeMinus() {
        fits("a^-2", "1/m²", "a [m]");
        fits("a^(-2)", "1/m²", "a [m]");
    }

    /** Peukert: 100 Ah over 20 A and 20 h to the power 1.2 is 0.25^1.2. */
    @Test
    void aBareFigureTakesAnyPower() {
        assertEquals(
                0.18946457081379978, value("(C/(I*H))^k", "1", "C = 100 Ah", "I = 20 A", "H = 20 h", "k = 1.2"), 1e-15);
        assertEquals(Math.pow(1e5, 0.9), value("Re^0.9", "1", "Re = 1e5"));
    }

    @Test
    void aPowerHasNoUnit() {
        assertEquals("`x = 2^a`, column 6: a power has the unit [m]", misfit("2^a", "1", "a [m]"));
    }

    @Test
    void theConditionOfIfHasNoUnit() {
        assertEquals(
                "`x = if(a, a, a)`, column 5: the condition of if has the unit [m]",
                misfit("if(a, a, a)", "m", "a [m]"));
    }

    @Test
    void theResultHasTheUnitDeclared() {
        assertEquals("gives [kg·m/s²] but declares [kg]", after(misfit("m*g", "kg", "m [kg]", "g [m/s²]")));
        assertEquals("gives [] but declares [m]", after(misfit("2", "m")));
    }

    @Test
    void whatTheAlgebraCannotTellApartPasses() {
        fits("F*r", "J", "F [N]", "r [m]");
        fits("1/T", "Hz", "T [s]");
    }

    @Test
    void aConditionIsAComparisonOfThingsAlike() {
        Formula sum = begun("U", "V").with("U", "voltage", "V").needs("U + U").build();
        assertEquals("`x = U`: `U + U` is not a comparison", fault(sum::checkUnits));
        Formula symbol = begun("U", "V").with("U", "voltage", "V").needs("U").build();
        assertEquals("`x = U`: `U` is not a comparison", fault(symbol::checkUnits));
        Formula unlike =
                begun("U", "V").with("U", "voltage", "V").needs("U > 60").build();
        assertEquals("`U > 60`, column 3: [kg·m²/(s³·A)] with []", fault(unlike::checkUnits));
    }

    @Test
    void entriesOfAListKeepTheirUnits() {
        fits("sum(m*x)/sum(m)", "m", "m[] [kg]", "x[] [m]");
        fits("sqrt(sum(u^2))", "kg", "u[] [kg]");
        assertEquals("gives [kg·m] but declares [kg]", after(misfit("sum(m*x)", "kg", "m[] [kg]", "x[] [m]")));
    }

    private static String after(String fault) {
        return fault.substring(fault.indexOf("`: ") + 3);
    }
}
