package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every factor of the unit table that NIST SP 811:2008, Appendix B.8, prints. */
class UnitFactorsTest {
    @ParameterizedTest(name = "{4}")
    @CsvFileSource(resources = "/check-values/units-sp811.csv", delimiter = ';', numLinesToSkip = 1)
    void aFactorAgreesWithThePrintedDigits(String unit, String si, String digits, String kind, String source) {
        Unit from = Unit.of(unit);
        Unit to = Unit.of(si);
        assertTrue(from.measuresLike(to), source);
        var printed = new BigDecimal(digits.replace(" ", ""));
        double halfLastDigit = printed.ulp().doubleValue() / 2;
        double tolerance = kind.equals("exact") ? 1e-15 * printed.doubleValue() : halfLastDigit;
        assertEquals(printed.doubleValue(), from.factor() / to.factor(), tolerance, source);
    }

    /** SP 811 prints 745.6999 W for the one and 735.4988 W for the other: 1.4 % apart. */
    @Test
    void theMetricHorsepowerIsNotTheMechanicalOne() {
        assertEquals(735.49875, Quantity.of("1 PS").si(), 1e-9);
        assertEquals(745.69987158227, Quantity.of("1 hp").si(), 1e-9);
        assertEquals(745.69987158227, Quantity.of("1 bhp").si(), 1e-9);
    }

    /** A pound per inch is no spring rate: SP 811 lists it as a mass per length. */
    @Test
    void aPoundPerInchIsNoSpringRate() {
        assertFalse(Unit.of("lb/in").measuresLike(Unit.of("N/mm")));
        assertTrue(Unit.of("lbf/in").measuresLike(Unit.of("N/mm")));
    }
}
