package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How numbers stand on paper. Expected texts are written by hand. */
class NotationTest {
    @ParameterizedTest
    @CsvSource({
        "1, 1",
        "-3, -3",
        "-0.0, 0",
        "0.45359237, 0.45359237",
        "1e-6, 0.000001",
        "1e6, 1000000",
        "1e16, 10000000000000000"
    })
    void aNumberPrintsWithoutAnExponent(double number, String text) {
        assertEquals(text, Notation.plain(number));
    }

    @ParameterizedTest
    @CsvSource({
        "2.25, 1, HALF_EVEN, 2.2",
        "2.35, 1, HALF_EVEN, 2.4",
        "2.31, 1, CEILING, 2.4",
        "2.39, 1, FLOOR, 2.3",
        "-2.39, 1, HALF_EVEN, −2.4",
        "-0.04, 1, HALF_EVEN, 0.0",
        "1500, 0, HALF_EVEN, 1500"
    })
    void aNumberIsRoundedTheWayAskedFor(double number, int decimals, RoundingMode mode, String text) {
        assertEquals(text, Notation.fixed(number, decimals, mode));
    }

    /** 0.1 + 0.2 is 0.30000000000000004 in binary. */
    @Test
    void whatBinaryAddsIsNoDigitOfTheResult() {
        assertEquals("0.3", Notation.fixed(0.1 + 0.2, 1, RoundingMode.CEILING));
        assertEquals("0.00", Notation.fixed(1e-16, 2, RoundingMode.CEILING));
    }

    /** Two significant digits of the uncertainty, as JCGM 100:2008, 7.2.6, suffices with. */
    @ParameterizedTest
    @CsvSource({
        "12, 0",
        "120, 0",
        "1.2, 1",
        "0.12, 2",
        "0.00012, 5",
        "1e-9, 6",
        "0, -1",
        "-1, -1",
        "NaN, -1",
        "Infinity, -1"
    })
    void anUncertaintyShowsTwoDigits(double uncertainty, int decimals) {
        assertEquals(decimals, Notation.decimalsFor(uncertainty));
    }

    @ParameterizedTest
    @CsvSource({"1500, 0", "12.3456, 2", "0.123456, 4", "0.5, 1", "12, 0", "0, 0", "123456, 0", "NaN, 0", "1e-9, 6"})
    void aNumberWithoutDoubtShowsFourDigitsAtMost(double number, int decimals) {
        assertEquals(decimals, Notation.decimalsOf(number));
    }
}
