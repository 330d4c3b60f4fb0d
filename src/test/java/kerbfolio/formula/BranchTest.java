package kerbfolio.formula;

import static kerbfolio.formula.Trial.exact;
import static kerbfolio.formula.Trial.formula;
import static kerbfolio.formula.Trial.measured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a small move of an input changes the law itself, the doubt of one law says nothing. */
class BranchTest {
    /** Current a charging point offers: IEC 61851-1, annex A, from memory. Both laws meet near 85 %. */
    private static final Formula PILOT = formula("if(d > 85*[%], 2.5*[A]*(d/[%] - 64), 0.6*[A]*d/[%])", "A", "d [%]");

    private static Working pilot(String duty) {
        return Working.fill(PILOT)
                .put("d", measured(duty, "the pilot", "0.2 %"))
                .work();
    }

    @Test
    void aLawThatChangesWithinTheDoubtIsFlagged() {
        assertTrue(pilot("85 %").flips());
        assertTrue(pilot("85.1 %").flips());
        assertTrue(pilot("84.9 %").flips());
    }

    @Test
    void aLawThatHoldsThroughoutTheDoubtIsNot() {
        assertFalse(pilot("50 %").flips());
        assertFalse(pilot("90 %").flips());
        assertEquals(30, Trial.in(pilot("50 %")), 1e-12);
        assertEquals(65, Trial.in(pilot("90 %")), 1e-12);
    }

    /** 0.6 A/% · 0.2 % on one side, 2.5 A/% · 0.2 % on the other. */
    @Test
    void awayFromTheStepTheDoubtIsThatOfTheLawInForce() {
        assertEquals(0.12, pilot("50 %").amount().orElseThrow().standardUncertainty(), 1e-12);
        assertEquals(0.5, pilot("90 %").amount().orElseThrow().standardUncertainty(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "min(a, 3); 3.1",
                "max(a, 3); 2.9",
                "abs(a); 0.5",
                "if(a > 3, a, 2*a); 3.2",
                "if(a <= 3, a, 2*a); 3.2",
                "(a > 3)*a; 3.2",
                "a*(a < 3); 2.8"
            })
    void everyKindOfBranchIsSeen(String expression, String figure) {
        Formula formula = formula(expression, "1", "a [1]");
        assertTrue(Working.fill(formula)
                .put("a", measured(figure, "meter", "1"))
                .work()
                .flips());
        assertFalse(Working.fill(formula)
                .put("a", measured(figure, "meter", "0.01"))
                .work()
                .flips());
        assertFalse(Working.fill(formula).put("a", exact(figure)).work().flips());
    }

    @ParameterizedTest
    @ValueSource(strings = {"85 %", "50 %"})
    void theFlagIsHandedOnThroughAChain(String duty) {
        Working current = pilot(duty);
        Formula power = formula("U*I", "kW", "U [V]", "I [A]");
        Working direct =
                Working.fill(power).put("U", exact("230 V")).put("I", current).work();
        Working plain = Working.fill(power)
                .put("U", exact("230 V"))
                .put("I", new Plain(current))
                .work();
        assertEquals(current.flips(), direct.flips());
        assertEquals(current.flips(), plain.flips());
    }
}
