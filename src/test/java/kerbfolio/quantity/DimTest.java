package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Exponents are counted in halves; expected values by hand. */
class DimTest {
    private static final Dim EACH = new Dim(2, 4, 6, 8, 10);

    @Test
    void aPowerMultipliesEveryExponent() {
        assertEquals(new Dim(1, 2, 3, 4, 5), EACH.power(0.5));
        assertEquals(new Dim(4, 8, 12, 16, 20), EACH.power(2));
        assertEquals(new Dim(-2, -4, -6, -8, -10), EACH.power(-1));
    }

    @Test
    void anExponentFinerThanAHalfIsRefused() {
        assertThrows(ArithmeticException.class, () -> EACH.power(0.25));
    }

    @Test
    void productsAddAndQuotientsSubtractExponents() {
        assertEquals(new Dim(3, 3, 3, 3, 3), EACH.times(new Dim(1, -1, -3, -5, -7)));
        assertEquals(new Dim(1, 5, 9, 13, 17), EACH.over(new Dim(1, -1, -3, -5, -7)));
        assertEquals(Dim.NONE, EACH.over(EACH));
    }

    @Test
    void aDimensionReadsAsAProductOfBaseUnits() {
        assertEquals("kg·m²·s³·A⁴·K^5", EACH.toString());
        assertEquals("1/(kg·m²·s³·A⁴·K^5)", Dim.NONE.over(EACH).toString());
        assertEquals("", Dim.NONE.toString());
    }
}
