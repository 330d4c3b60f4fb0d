package kerbfolio.formula;

import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.fault;
import static kerbfolio.formula.Trial.formula;
import static kerbfolio.formula.Trial.measured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import org.junit.jupiter.api.Test;

/** A formula filled with terms, and what it says when it cannot give a figure. */
class WorkingTest {
    private static final Formula MARGIN = formula("R - m", "kg", "R [kg]", "m [kg]");
    private static final Absent SCALE = Absent.unrecorded("weighings.rear", "rear axle", "kg");

    private static Working margin(Term rating, Term mass) {
        return Working.fill(MARGIN).put("R", rating).put("m", mass).work();
    }

    @Test
    void aWorkingIsATermLikeAnyOther() {
        Working margin = margin(exact("1000 kg"), exact("900 kg"));
        assertEquals("result", margin.name());
        assertEquals(Unit.of("kg"), margin.unit());
        assertEquals(100, margin.amount().orElseThrow().si());
        assertEquals(Basis.COMPUTED, margin.basis());
        assertEquals("computed", margin.basis().toString());
        assertEquals("result", margin.origin());
        assertEquals(List.of(), margin.missing());
        assertEquals(List.of("R", "m"), List.copyOf(margin.inputs().keySet()));
        assertEquals(MARGIN, margin.formula());
    }

    @Test
    void aWorkingMayBeCalledByWordsOfItsOwn() {
        Working margin = Working.fill(MARGIN)
                .named("rear axle margin")
                .put("R", exact("1 kg"))
                .put("m", exact("1 kg"))
                .work();
        assertEquals("rear axle margin", margin.name());
    }

    @Test
    void poundsFillAFormulaInKilograms() {
        assertEquals(
                1000 - 100 * 0.45359237,
                margin(exact("1000 kg"), exact("100 lb")).amount().orElseThrow().si());
    }

    @Test
    void anUnknownSymbolIsRefusedAtOnce() {
        assertEquals(
                "`x = R - m`: no symbol `Q`", fault(() -> Working.fill(MARGIN).put("Q", exact("1 kg"))));
    }

    @Test
    void aSymbolLeftEmptyIsRefusedAtTheEnd() {
        assertEquals(
                "`x = R - m`: `m` is not filled",
                fault(() -> Working.fill(MARGIN).put("R", exact("1 kg")).work()));
    }

    @Test
    void aTermOfAnotherKindIsRefused() {
        assertEquals(
                "`x = R - m`: `m` [kg] filled with 3 m [m]",
                fault(() -> Working.fill(MARGIN).put("m", exact("3 m"))));
    }

    @Test
    void aListAndASingleTermAreNotTakenForEachOther() {
        Formula sum = formula("sum(m) + a", "kg", "m[] [kg]", "a [kg]");
        assertEquals(
                "`x = sum(m) + a`: `m` is a list", fault(() -> Working.fill(sum).put("m", exact("1 kg"))));
        assertEquals(
                "`x = sum(m) + a`: `a` is not a list",
                fault(() -> Working.fill(sum).each("a", List.of(exact("1 kg")))));
    }

    @Test
    void listsOfUnequalLengthAreNotMultiplied() {
        var filling = Working.fill(formula("sum(m*x)", "kg·m", "m[] [kg]", "x[] [m]"))
                .each("m", exact(List.of("1 kg")))
                .each("x", exact(List.of("1 m", "2 m", "3 m")));
        assertThrows(IllegalArgumentException.class, filling::work);
    }

    /** 1·2 + 3·4 = 14; 1² + 3² = 10; an empty list sums to nothing. */
    @Test
    void listsAreSummed() {
        Formula products = formula("sum(m*x)", "kg·m", "m[] [kg]", "x[] [m]");
        Formula squares = formula("sum(m^2)", "kg²", "m[] [kg]");
        var m = exact(List.of("1 kg", "3 kg"));
        var x = exact(List.of("2 m", "4 m"));
        assertEquals(
                14, Trial.in(Working.fill(products).each("m", m).each("x", x).work()));
        assertEquals(10, Trial.in(Working.fill(squares).each("m", m).work()));
        assertEquals(
                0,
                Trial.in(Working.fill(products)
                        .each("m", List.of())
                        .each("x", List.of())
                        .work()));
        assertEquals(0, Trial.in(Working.fill(squares).each("m", List.of()).work()));
    }

    @Test
    void reservationsAreHandedOnOnce() {
        Term weak = new Known(
                "p", "tyre", Quantity.of("600 kg"), Amount.exact(600), Basis.STATED, "a table", List.of("unconfirmed"));
        Working margin = margin(weak, margin(weak, exact("1 kg")));
        assertEquals(List.of("unconfirmed"), margin.reservations());
    }

    @Test
    void theBudgetListsTheLargestCauseFirst() {
        Working margin = margin(measured("1000 kg", "scale", "4 kg"), measured("900 kg", "tape", "3 kg"));
        assertEquals(5, margin.amount().orElseThrow().standardUncertainty(), 1e-12);
        List<Share> budget = margin.budget();
        assertEquals(List.of("scale", "tape"), budget.stream().map(Share::cause).toList());
        assertEquals(0.64, budget.get(0).part(), 1e-12);
        assertEquals(-3, budget.get(1).effect(), 1e-12);
    }

    @Test
    void aCauseThatCancelsIsNotInTheBudget() {
        Known mass = measured("900 kg", "scale", "3 kg");
        Working nothing = margin(mass, mass);
        assertEquals(List.of(), nothing.budget());
        assertEquals(0, nothing.amount().orElseThrow().standardUncertainty());
    }

    @Test
    void aPlainTermCarriesEverythingButItsDoubt() {
        Known known = new Known(
                "p",
                "axle",
                Quantity.of("900 kg"),
                new Amount(900, Map.of("scale", 3.0)),
                Basis.MEASURED,
                "scale",
                List.of("out of date"));
        var plain = new Plain(known);
        assertEquals(Optional.of(Amount.exact(900)), plain.amount());
        assertEquals(known.name(), plain.name());
        assertEquals(known.unit(), plain.unit());
        assertEquals(known.basis(), plain.basis());
        assertEquals(known.origin(), plain.origin());
        assertEquals(List.of("out of date"), plain.reservations());
        assertEquals(List.of(SCALE), new Plain(SCALE).missing());
        assertEquals(Optional.empty(), new Plain(SCALE).amount());
    }

    @Test
    void onlyASymbolOfTheFormulaIsAskedFor() {
        Working margin = margin(exact("1 kg"), exact("1 kg"));
        assertEquals("`x = R - m`: no symbol `Q`", fault(() -> margin.term("Q")));
    }
}
