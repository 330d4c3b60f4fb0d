package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures as people write them. 1 lb = 0.453 592 37 kg and 0 °C = 273.15 K are exact (NIST SP 811:2008, B.8 and B.7). */
class QuantityTest {
    private static String refused(String text) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, () -> Quantity.of(text))
                .getMessage());
    }

    @ParameterizedTest
    @CsvSource({"-20 °C, 253.15", "212 °F, 373.15", "−40 °F, 233.15", "-40 deg C, 233.15", "0 K, 0"})
    void aTemperatureBecomesKelvin(String text, double kelvin) {
        assertEquals(kelvin, Quantity.of(text).si(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"20 °C ± 2 °C, 2", "20 °C ± 2 K, 2", "68 °F ± 9 °F, 5", "20 ± 2 °C, 2"})
    void aDoubtInDegreesScalesWithoutOffset(String text, double kelvin) {
        assertEquals(kelvin, Quantity.of(text).half().orElseThrow(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "592 lb ± 1 lb",
                "592 lb ± 1",
                "592 ± 1 lb",
                "592lb±1lb",
                "592 lb +/- 1 lb",
                "592 lb +- 1 lb",
                " 592\u00a0±\u00a01\u202flb "
            })
    void aWeightWithItsDoubtIsReadHoweverItIsTyped(String text) {
        Quantity weight = Quantity.of(text);
        assertEquals(592 * 0.45359237, weight.si(), 1e-10);
        assertEquals(0.45359237, weight.half().orElseThrow(), 1e-12);
        assertEquals("592", weight.digits());
        assertEquals("lb", weight.unit().text());
        assertEquals(Sense.VALUE, weight.sense());
    }

    @Test
    void theDoubtMayBeInAnotherUnitOfItsKind() {
        assertEquals(0.5, Quantity.of("592 lb ± 500 g").half().orElseThrow(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"12.5 kWh ± 2 %, 9e5", "400 V ± 0.5 %, 2", "-400 V ± 0.5 %, 2", "0.95 ± 1 %, 0.0095", "50 % ± 1 %, 0.01"
    })
    void aPercentageAfterPlusMinusIsOfTheFigure(String text, double half) {
        assertEquals(half, Quantity.of(text).half().orElseThrow(), 1e-12 * half);
    }

    /** Else a motion ratio of 0.95 ± 1 % would become 0.95 %. */
    @Test
    void aBareFigureWithAPercentageStaysABareFigure() {
        assertEquals(Unit.ONE, Quantity.of("0.95 ± 1 %").unit());
        assertEquals(0.95, Quantity.of("0.95 ± 1 %").si());
    }

    @ParameterizedTest
    @CsvSource({"> 550 MΩ, ABOVE", ">550MOhm, ABOVE", ">= 550 MΩ, ABOVE", "≥ 550 MΩ, ABOVE"})
    void aDisplayThatReadsNoFurtherIsABoundBelow(String text, Sense sense) {
        assertEquals(sense, Quantity.of(text).sense());
        assertEquals(550e6, Quantity.of(text).si());
    }

    @ParameterizedTest
    @ValueSource(strings = {"< 0.1 Ω", "<0.1ohm", "<= 0.1 Ω", "≤ 0.1 Ω"})
    void aReadingUnderTheRangeIsABoundAbove(String text) {
        assertEquals(Sense.BELOW, Quantity.of(text).sense());
        assertEquals("< ", Sense.BELOW.sign());
    }

    @ParameterizedTest
    @CsvSource({"1.5e3 kg, 1500", "1.5E+3 kg, 1500", "15e-1 kg, 1.5", "+5 kg, 5", "-5 kg, -5", "−5 kg, -5", "5kg, 5"})
    void signsAndExponentsAreRead(String text, double si) {
        assertEquals(si, Quantity.of(text).si(), 1e-12);
    }

    @Test
    void aPerSecondMayFollowANumber() {
        assertEquals(5, Quantity.of("5 1/s").si());
        assertEquals("1/s", Quantity.of("5 1/s").unit().text());
    }

    @ParameterizedTest
    @CsvSource({
        "592 lb, 0.226796185",
        "592.0 lb, 0.0226796185",
        "1.2 MΩ, 5e4",
        "1.50e3 kg, 5",
        "2E-3 m, 0.0005",
        "20 °C, 0.5",
        "−7.25 mm, 5e-6"
    })
    void halfTheLastDigitIsInTheUnitWithoutOffset(String text, double si) {
        assertEquals(si, Quantity.of(text).halfLastDigit(), 1e-12 * si);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,650 lb", "1 650 lb", "1,5 kg", "592 lb ± 1,5 lb", "1\u202f650\u00a0lb"})
    void aSeparatorInANumberIsRefusedWithAHint(String text) {
        String why = refused(text);
        assertTrue(why.startsWith("`" + text + "` is not a figure with a unit"), why);
        assertTrue(why.contains("decimal sign as a point and thousands without a separator"), why);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", " ", "lb", "± 5 kg", ".5 kg", "5. kg", "1.2.3 kg", "592 lb ±", "5 kg > 3 kg", "NaN kg", "-"})
    void whatIsNoFigureIsRefused(String text) {
        String why = refused(text);
        assertEquals("`" + text + "` is not a figure with a unit", why);
    }

    @Test
    void aNegativeDoubtIsRefused() {
        assertEquals("what stands after ± is never negative", refused("592 lb ± -1 lb"));
    }

    @Test
    void aDoubtOfAnotherKindIsRefused() {
        assertEquals("`s` after ± does not measure the same as `lb`", refused("592 lb ± 1 s"));
    }

    @Test
    void anUnknownUnitIsRefusedByName() {
        assertEquals("unknown unit `stone`", refused("12 stone"));
        assertEquals("unknown unit `stone`", refused("12 kg ± 1 stone"));
        assertTrue(refused("2/0 AWG").contains("designation"));
    }

    @ParameterizedTest
    @CsvSource({"1e999 kg, number", "1e308 t, figure", "1 kg ± 1e308 t, figure"})
    void aNumberBeyondAllMeasureIsRefused(String text, String word) {
        assertTrue(refused(text).endsWith("is too large a " + word), refused(text));
    }

    @Test
    void anExponentBeyondAllMeasureIsNoExponent() {
        assertTrue(refused("1e-99999999999 kg").startsWith("unknown unit"));
    }

    @Test
    void aVeryLongTextIsRefusedAndShownShortened() {
        assertEquals("`" + "9".repeat(40) + "…` is not a figure with a unit", refused("9".repeat(5000) + " kg"));
    }

    /** These would keep a careless pattern busy for years. */
    @ParameterizedTest
    @ValueSource(strings = {"1", "-", "1-", "1e", "1.", "± 1", "1±", " ", "\u00a0", "1 1", "lb1", ">"})
    void aHostileTextIsAnsweredAtOnce(String part) {
        String text = part.repeat(100).substring(0, 100);
        assertFalse(refused(text.substring(0, 99) + "!").isEmpty());
    }

    @Test
    void theTextIsKeptAsItWasWritten() {
        assertEquals("1.50 kg", Quantity.of(" 1.50 kg ").text());
        assertEquals("1.50 kg", Quantity.of("1.50 kg").toString());
        assertEquals("1.50", Quantity.of("1.50 kg").digits());
    }

    @Test
    void aFigureOfTheProgramPrintsShort() {
        assertEquals("0.45359237 kg", Quantity.of(0.45359237, Unit.of("kg")).text());
        assertEquals("4", Quantity.of(4, Unit.ONE).text());
    }
}
