package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Effects of unrelated causes combine in quadrature: JCGM 100:2008, 5.1.2; the sums are worked by hand. */
class AmountTest {
    @Test
    void unrelatedCausesCombineInQuadrature() {
        var amount = new Amount(100, Map.of("scale", 3.0, "tape", -4.0));
        assertEquals(5, amount.standardUncertainty());
        assertEquals(10, amount.expanded());
    }

    @Test
    void anExactFigureHasNoDoubt() {
        assertEquals(0, Amount.exact(7).expanded());
    }

    @Test
    void theEffectsCannotBeChangedAfterwards() {
        var amount = new Amount(1, Map.of("scale", 1.0));
        assertThrows(UnsupportedOperationException.class, () -> amount.effects().put("tape", 2.0));
    }
}
