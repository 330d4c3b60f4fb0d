package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scales, differences and products of units. NIST SP 811:2008, B.7: t/°C = (t/°F − 32)/1.8. */
class UnitTest {
    @Test
    void aTemperatureGoesThereAndBack() {
        assertEquals(100, Unit.of("°C").fromSi(Unit.of("°F").toSi(212)), 1e-12);
        assertEquals(-40, Unit.of("°F").fromSi(Unit.of("°C").toSi(-40)), 1e-12);
    }

    @Test
    void aDifferenceKnowsNoOffset() {
        assertEquals(18, Unit.of("°F").differenceFromSi(10), 1e-12);
        assertEquals(10, Unit.of("°C").differenceFromSi(10), 1e-12);
    }

    @Test
    void unitsOfOneKindMeasureAlike() {
        assertTrue(Unit.of("psi").measuresLike(Unit.of("bar")));
        assertFalse(Unit.of("kg").measuresLike(Unit.of("lbf")));
    }

    /** Read back, each product must be the same product: what follows a solidus would stand below it. */
    @ParameterizedTest
    @CsvSource({
        "kg, m, kg·m",
        "m, m, m²",
        "lb, ft, lb·ft",
        "km/h, s, (km/h)·s",
        "km/h, km/h, (km/h)²",
        "N·m, N·m, (N·m)²",
        "mm², mm², (mm²)²",
        "s, km/h, s·km/h",
        "1, kg, kg",
        "kg, 1, kg",
        "1, 1, ''"
    })
    void aProductPrintsWhatItIs(String left, String right, String printed) {
        Unit product = Unit.of(left).times(Unit.of(right));
        assertEquals(printed, product.text());
        assertEquals(Unit.of(left).factor() * Unit.of(right).factor(), product.factor());
        assertEquals(Unit.of(left).dim().times(Unit.of(right).dim()), product.dim());
    }

    @ParameterizedTest
    @CsvSource({
        "V, V",
        "kV, V",
        "mΩ, Ω",
        "µF, F",
        "kW, W",
        "Hz, Hz",
        "Ω/V, Ω/V",
        "Ω/km, kg·m/(s³·A²)",
        "N/mm, kg/s²",
        "%, ''",
        "s^0.5, s^0.5",
        "m^1.5, m^1.5",
        "m^5, m^5",
        "mm⁴, m⁴",
        "1/kg, 1/kg"
    })
    void theCoherentUnitIsItselfOrNamedOrInBaseUnits(String unit, String base) {
        Unit coherent = Unit.of(unit).coherent();
        assertEquals(base, coherent.text());
        assertEquals(1, coherent.factor());
        assertTrue(coherent.measuresLike(Unit.of(unit)));
    }

    @Test
    void aUnitPrintsAsItsText() {
        assertEquals("lbf·ft", Unit.of("lb-ft").toString());
    }
}
