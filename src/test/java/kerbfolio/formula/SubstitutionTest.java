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

/** A formula with its values and units in place of the symbols, as one line by {@link Line}. */
class SubstitutionTest {
    private static String si(Working working) {
        return Line.of(working.substituted(UnitSystem.SI));
    }

    private static String us(Working working) {
        return Line.of(working.substituted(UnitSystem.US));
    }

    /** 100 kg are 220.46 lb and 2.5 m are 8.202 ft (NIST SP 811:2008, B.8). */
    @Test
    void aSubstitutionPrintsValuesInTheUnitsOfTheJob() {
        Working moment = Working.fill(formula("m*x/L", "kg", "m [kg]", "x [m]", "L [m]"))
                .put("m", exact("100 kg"))
                .put("x", exact("1.25 m"))
                .put("L", exact("2.5 m"))
                .work();
        assertEquals("[100 kg·1.25 m|2.5 m]", si(moment));
        assertEquals("[220.5 lb·4.101 ft|8.202 ft]", us(moment));
    }

    @Test
    void whatWasWrittenInTheUnitOfThePrintKeepsItsDigits() {
        Working sum = work("a + b", "kg", "a = 592.0 lb", "b = -2 lb");
        assertEquals("592.0 lb + (−2 lb)", us(sum));
    }

    /** ± 1 kg at k = 2 shows one decimal: two significant digits of the uncertainty. */
    @Test
    void anUncertainFigureShowsNoMoreDigitsThanAreKnown() {
        Working twice = Working.fill(formula("2*m", "kg", "m [kg]"))
                .put("m", moved("123.456 lb", Map.of("scale", 0.5)))
                .work();
        assertEquals("2·56.0 kg", si(twice));
    }

    @Test
    void aNegativeValueStandsInBracketsWhereASignStandsBeforeIt() {
        assertEquals("(−3 kg)·4 − (−3 kg)", si(work("a*n - a", "kg", "a = -3 kg", "n = 4")));
        assertEquals("(−3)^(2)", si(work("a^2", "1", "a = -3")));
    }

    @Test
    void aValueWithASolidusInItsUnitStandsInBrackets() {
        Working working = work("v*t", "m", "v = 10 m/s", "t = 2 s");
        assertEquals("(10 m/s)·2 s", si(working));
    }

    @Test
    void aConstantPrintsAsCited() {
        Formula weight = begun("m*g + c", "N")
                .with("m", "mass", "kg")
                .constant("g", 9.80665, "m/s²", Trial.SOURCE)
                .constant("c", -2, "N", Trial.SOURCE)
                .build();
        Working working = Working.fill(weight).put("m", exact("10 kg")).work();
        assertEquals("10 kg·(9.80665 m/s²) + (−2 N)", si(working));
    }

    /** 10·1 + 20·2 = 50 kg·m, 10 + 20 = 30 kg; in pounds and feet 361.7 and 66.14. */
    @Test
    void aSumPrintsItsTotal() {
        Working centre = Working.fill(formula("sum(m*x)/sum(m)", "m", "m[] [kg]", "x[] [m]"))
                .each("m", exact(List.of("10 kg", "20 kg")))
                .each("x", exact(List.of("1 m", "2 m")))
                .work();
        assertEquals("[50 kg·m|30 kg]", si(centre));
        assertEquals("[361.7 lb·ft|66.14 lb]", us(centre));
    }

    @Test
    void aSumOfSquaresPrintsItsTotalSquared() {
        Working root = Working.fill(formula("sqrt(sum(u^2))", "kg", "u[] [kg]"))
                .each("u", exact(List.of("3 kg", "4 kg")))
                .work();
        assertEquals("√(25 kg²)", si(root));
    }

    @Test
    void aSumOfBareNumbersHasNoUnit() {
        Working sum = Working.fill(formula("sum(n*k)", "1", "n[] [1]", "k[] [1]"))
                .each("n", exact(List.of("2", "3")))
                .each("k", exact(List.of("5", "7")))
                .work();
        assertEquals("31", si(sum));
    }

    @Test
    void aTemperatureIsSubstitutedOnTheScaleOfTheJob() {
        Working rise = Working.fill(formula("T_1 - T_0", "K", "T_1 [°C]", "T_0 [°C]"))
                .put("T_1", measured("60 °C", "probe", "0.5 K"))
                .put("T_0", measured("20 °C", "probe", "0.5 K"))
                .work();
        assertEquals("60 °C − 20 °C", si(rise));
        assertEquals("140.0 °F − 68.0 °F", us(rise));
    }
}
