package kerbfolio.formula;

import static kerbfolio.formula.Trial.SOURCE;
import static kerbfolio.formula.Trial.begun;
import static kerbfolio.formula.Trial.fault;
import static kerbfolio.formula.Trial.formula;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.source.Citation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a formula must say of itself before it is one. */
class DeclarationTest {
    @Test
    void aSymbolDeclaredButUnusedIsRefused() {
        assertEquals("`x = a`: `b` is declared but not used", fault(() -> formula("a", "m", "a [m]", "b [m]")));
        assertEquals(
                "`x = a`: `g` is declared but not used",
                fault(begun("a", "m").with("a", "length", "m").constant("g", 9.80665, "m/s²", SOURCE)::build));
    }

    @Test
    void aSymbolUsedButUndeclaredIsRefused() {
        assertEquals("`x = a + b`: `b` is used but not declared", fault(() -> formula("a + b", "m", "a [m]")));
        assertEquals(
                "`x = a`: `b` is used but not declared",
                fault(begun("a", "m").with("a", "length", "m").needs("a > b")::build));
    }

    @Test
    void aConditionAloneIsUseEnough() {
        Formula formula = begun("a", "m")
                .with("a", "length", "m")
                .with("b", "length", "m")
                .needs("a > b")
                .build();
        assertEquals(List.of("a > b"), formula.needs());
    }

    @Test
    void aSymbolIsDeclaredOnce() {
        String why = "`x = a`: `a` is declared twice";
        assertEquals(why, fault(() -> begun("a", "m").with("a", "one", "m").with("a", "two", "m")));
        assertEquals(why, fault(() -> begun("a", "m").with("a", "one", "m").each("a", "two", "m")));
        assertEquals(why, fault(() -> begun("a", "m").with("a", "one", "m").constant("a", 1, "m", SOURCE)));
        assertEquals(
                why, fault(() -> begun("a", "m").constant("a", 1, "m", SOURCE).with("a", "two", "m")));
        assertEquals(
                why, fault(() -> begun("a", "m").constant("a", 1, "m", SOURCE).constant("a", 1, "m", SOURCE)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " "})
    void aMissingUnitIsRefused(String unit) {
        String why = "`x = a`: a unit is missing; write 1 for a bare number";
        assertEquals(why, fault(() -> begun("a", "m").with("a", "length", unit)));
        assertEquals(why, fault(() -> begun("a", "m").each("a", "length", unit)));
        assertEquals(why, fault(() -> begun("a", "m").constant("a", 1, unit, SOURCE)));
        assertEquals(why, fault(() -> begun("a", unit)));
    }

    @Test
    void anUnknownUnitIsRefused() {
        assertEquals("`x = a`: unknown unit `furlong`", fault(() -> begun("a", "furlong")));
    }

    @Test
    void aFormulaWithoutItsSourceIsRefused() {
        assertEquals(
                "`x = 1`: says not where it is from", fault(Formula.of("x = 1").giving("one", "1")::build));
    }

    @Test
    void aFormulaSaysWhatItGives() {
        assertEquals(
                "`x = 1`: says not what it gives", fault(Formula.of("x = 1").from(SOURCE)::build));
    }

    @ParameterizedTest
    @ValueSource(strings = {"m", "m + sum(m)", "sum(m)*m", "sqrt(m)"})
    void aListStandsOnlyInsideASum(String expression) {
        String why = fault(() -> formula(expression, "kg", "m[] [kg]"));
        assertTrue(why.endsWith("the list `m` stands outside sum"), why);
    }

    @Test
    void aListStandsOnlyInsideASumInAConditionToo() {
        assertEquals(
                "`m > 0*[kg]`, column 1: the list `m` stands outside sum",
                fault(begun("sum(m)", "kg").each("m", "mass", "kg").needs("m > 0*[kg]")::build));
    }

    @ParameterizedTest
    @CsvSource({"sum(a), 9", "sum(m*a), 11"})
    void whatIsNoListIsNotSummed(String expression, int column) {
        String why = fault(() -> formula(expression + " + sum(m)*a", "kg", "m[] [kg]", "a [1]"));
        assertTrue(why.contains(", column " + column + ": `a` inside sum is not a list"), why);
    }

    /** Spreadsheet engines disagree on anything richer; a formula per row comes first, and then the sum of its column. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sum(2*m)",
                "sum(m*2)",
                "sum(m + x)",
                "sum(m/x)",
                "sum(m^3)",
                "sum(m^-2)",
                "sum(-m)",
                "sum(sum(m))",
                "sum(m*x*x)",
                "sum((m + x)^2)",
                "sum(sqrt(m))",
                "sum(5)",
                "sum(m^x)",
                "sum(if(m, m, m))"
            })
    void aSumOfAnotherShapeIsRefused(String expression) {
        String why = fault(() -> formula(expression, "1", "m[] [1]", "x[] [1]"));
        assertTrue(why.endsWith(": sum takes a list, a product of two lists, or a list squared"), why);
    }

    @Test
    void aConstantCarriesItsCitation() {
        Formula weight = begun("m*g", "N")
                .with("m", "mass", "kg")
                .constant("g", 9.80665, "m/s²", new Citation("NIST SP 811, 2008", "B.8"))
                .build();
        Constant g = weight.constants().get(0);
        assertEquals("g", g.symbol());
        assertEquals("9.80665 m/s²", g.value().text());
        assertEquals("NIST SP 811, 2008, B.8", g.citation().toString());
        assertEquals(g, weight.constant("g"));
        assertEquals("`x = m*g`: no constant `m`", fault(() -> weight.constant("m")));
    }

    @Test
    void aFormulaSaysWhatItWasDeclaredWith() {
        Formula formula = begun("sum(m)/n", "kg")
                .each("m", "masses", "kg")
                .with("n", "number of them", "1")
                .needs("n > 0")
                .build();
        assertEquals("x = sum(m)/n", formula.text());
        assertEquals("x = sum(m)/n", formula.toString());
        assertEquals("result", formula.result().meaning());
        assertEquals(
                List.of("m", "n"),
                formula.symbols().stream().map(Declared::symbol).toList());
        assertEquals(
                List.of(true, false),
                formula.symbols().stream().map(Declared::each).toList());
        assertEquals(List.of(SOURCE), formula.citations());
        assertEquals(List.of("n > 0"), formula.needs());
    }
}
