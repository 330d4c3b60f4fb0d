package kerbfolio.formula;

import static kerbfolio.formula.Trial.begun;
import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.formula;
import static kerbfolio.formula.Trial.measured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.quantity.Unit;
import org.junit.jupiter.api.Test;

/** Where there is no figure, there is a reason, and it can be read. */
class NoEvidenceTest {
    private static final Formula MARGIN = formula("R - m", "kg", "R [kg]", "m [kg]");
    private static final Absent SCALE = Absent.unrecorded("weighings.rear", "rear axle", "kg");

    private static Working margin(Term rating, Term mass) {
        return Working.fill(MARGIN).put("R", rating).put("m", mass).work();
    }

    @Test
    void anAbsentReadingGivesNoFigureAndSaysWhatIsMissing() {
        Working margin = margin(exact("1000 kg"), SCALE);
        assertEquals(Optional.empty(), margin.amount());
        assertEquals(Basis.ABSENT, margin.basis());
        assertEquals("rear axle: not recorded", margin.origin());
        assertEquals(List.of(SCALE), margin.missing());
        assertEquals(List.of(), margin.budget());
        assertFalse(margin.flips());
    }

    @Test
    void whatIsMissingIsNamedOnceThroughAChain() {
        Working first = margin(exact("1000 kg"), SCALE);
        Working second = margin(first, SCALE);
        assertEquals(List.of(SCALE), second.missing());
        assertEquals("result: rear axle: not recorded; rear axle: not recorded", second.origin());
    }

    /** The trap: below the safe voltage the formula would give a time of −2.2 s. */
    @Test
    void aConditionThatFailsGivesNoEvidenceWithItsTextAndTheValues() {
        Formula discharge = begun("R*C*ln(U_0/U_s)", "s")
                .with("R", "bleed resistance", "kΩ")
                .with("C", "capacitance", "µF")
                .with("U_0", "highest voltage", "V")
                .with("U_s", "safe voltage", "V")
                .needs("U_0 > U_s")
                .build();
        Working working = Working.fill(discharge)
                .put("R", exact("20 kΩ"))
                .put("C", exact("500 µF"))
                .put("U_0", exact("48 V"))
                .put("U_s", exact("60 V"))
                .work();
        assertEquals(Optional.empty(), working.amount());
        assertEquals("needs U_0 > U_s, which does not hold: U_0 = 48 V, U_s = 60 V", working.origin());
        assertEquals(List.of(), working.missing());
        Working twice =
                Working.fill(formula("2*t", "s", "t [s]")).put("t", working).work();
        assertEquals("result: " + working.origin(), twice.origin());
    }

    @Test
    void aConditionShowsEveryFigureItLooksAt() {
        Formula formula = begun("m", "kg")
                .with("m", "axle", "kg")
                .with("m_u", "wheel", "kg")
                .each("n", "counts", "1")
                .constant("k", 2, "1", Trial.SOURCE)
                .needs("m > k*m_u*sum(n)")
                .build();
        Working working = Working.fill(formula)
                .put("m", exact("50 kg"))
                .put("m_u", exact("30 kg"))
                .each("n", exact(List.of("1")))
                .work();
        assertEquals("needs m > k*m_u*sum(n), which does not hold: m = 50 kg, m_u = 30 kg", working.origin());
    }

    @Test
    void aConditionOnNothingMeasuredStillGivesItsText() {
        Formula never = begun("a", "1").with("a", "figure", "1").needs("1 > 2").build();
        assertEquals(
                "needs 1 > 2, which does not hold",
                Working.fill(never).put("a", exact("1")).work().origin());
    }

    @Test
    void whatHasNoFiniteResultIsNoEvidence() {
        for (String expression : List.of("1/a", "ln(a)", "ln(-1 - a)", "sqrt(-1 - a)", "1/a - 1/a")) {
            Working working = Trial.work(expression, "1", "a = 0");
            assertEquals(Optional.empty(), working.amount(), expression);
            assertEquals("the formula has no finite result for these figures", working.origin(), expression);
        }
    }

    @Test
    void aConditionThatIsNoNumberDoesNotHold() {
        Formula formula =
                begun("a", "1").with("a", "figure", "1").needs("sqrt(a) >= 0").build();
        assertEquals(
                "needs sqrt(a) >= 0, which does not hold: a = −1",
                Working.fill(formula).put("a", exact("-1")).work().origin());
    }

    @Test
    void aDoubtThatLeavesTheRangeOfTheFormulaIsNoEvidence() {
        Working root = Working.fill(formula("sqrt(a)", "1", "a [1]"))
                .put("a", measured("1", "the meter", "2"))
                .work();
        assertEquals(Optional.empty(), root.amount());
        assertEquals("within its uncertainty, the meter leaves the range of the formula", root.origin());
    }

    @Test
    void anAbsentTermSaysSo() {
        assertEquals("not recorded", SCALE.origin());
        assertEquals("not recorded", SCALE.basis().word());
        assertEquals(Unit.of("kg"), SCALE.unit());
        assertEquals(List.of(), SCALE.reservations());
        assertTrue(SCALE.amount().isEmpty());
        assertTrue(SCALE.isUnrecorded());
        assertFalse(new Absent("p", "axle", Unit.of("kg"), "no instrument is named").isUnrecorded());
    }
}
