package kerbfolio.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The spellings people type, with the factor their definitions give: SI prefixes (BIPM SI Brochure, 9th edition, table
 * 7), and the international foot, pound and standard gravity (NIST SP 811:2008, B.8).
 */
class SpellingsTest {
    @ParameterizedTest
    @CsvSource(delimiter = ';', quoteCharacter = '"', textBlock = """
            Nm N.m N*m N·m N⋅m newton-metre           ; 1                    ; kg·m²/s²
            kNm kN·m kN.m                             ; 1000                 ; kg·m²/s²
            lb-ft ft-lb ft-lbs lb·ft lbf·ft lbf-ft ft·lbf ft-lbf lb.ft ; 1.3558179483314004 ; kg·m²/s²
            lb-in in-lb lbf·in in·lbf                 ; 0.1129848290276167   ; kg·m²/s²
            kgf·m kgf-m kgfm kgf.m                    ; 9.80665              ; kg·m²/s²
            mm2 mm^2 mm²                              ; 1e-6                 ; m²
            cm2 cm^2 cm²                              ; 1e-4                 ; m²
            µm² µm2 um2                               ; 1e-12                ; m²
            km2 km²                                   ; 1e6                  ; m²
            in2 in^2 in²                              ; 6.4516e-4            ; m²
            mm3 mm^3 mm³                              ; 1e-9                 ; m³
            cm3 cm^3 cm³ cc mL ml                     ; 1e-6                 ; m³
            in3 in^3 in³                              ; 1.6387064e-5         ; m³
            ft3 ft^3 ft³                              ; 0.028316846592       ; m³
            L l litre liters                          ; 1e-3                 ; m³
            ohm ohms Ohm Ω \u2126                     ; 1                    ; kg·m²/(s³·A²)
            kohm kOhm kΩ k\u2126                      ; 1000                 ; kg·m²/(s³·A²)
            Mohm MOhm MΩ M\u2126 megohm               ; 1e6                  ; kg·m²/(s³·A²)
            mohm mOhm mΩ m\u2126 milliohm             ; 1e-3                 ; kg·m²/(s³·A²)
            Ω/V ohm/V ohm/volt ohms/volt \u2126/V     ; 1                    ; 1/A
            uF \u00b5F \u03bcF                        ; 1e-6                 ; s⁴·A²/(kg·m²)
            us \u00b5s \u03bcs                        ; 1e-6                 ; s
            uohm \u00b5ohm \u03bcohm \u03bc\u2126     ; 1e-6                 ; kg·m²/(s³·A²)
            Wh watt·h                                 ; 3600                 ; kg·m²/s²
            kWh kW·h kW*h                             ; 3.6e6                ; kg·m²/s²
            Ah A·h A*h                                ; 3600                 ; s·A
            psi                                       ; 6894.757293168361    ; kg/(m·s²)
            bar                                       ; 1e5                  ; kg/(m·s²)
            km/h kph kmh km/hr                        ; 0.2777777777777778   ; m/s
            mph mi/h mi/hr                            ; 0.44704              ; m/s
            m/s2 m/s^2 m/s² m/s/s m·s^-2              ; 1                    ; m/s²
            A·s^0.5/mm² A*s^0.5/mm2                   ; 1e6                  ; s^0.5·A/m²
            kg/m3 kg/m^3 kg/m³                        ; 1                    ; kg/m³
            Wh/km                                     ; 3.6                  ; kg·m/s²
            N/mm                                      ; 1000                 ; kg/s²
            L/min l/min                               ; 1.6666666666666667e-5; m³/s
            lb lbs pound pounds                       ; 0.45359237           ; kg
            deg ° degrees                             ; 0.017453292519943295 ; ""
            % percent                                 ; 0.01                 ; ""
            rpm r/min                                 ; 0.10471975511965977  ; 1/s
            1/s /s Hz s^-1                            ; 1                    ; 1/s
            """)
    void anAsciiSpellingIsTheUnitItMeans(String spellings, double factor, String base) {
        for (String spelling : spellings.split(" ")) {
            Unit unit = Unit.of(spelling);
            assertEquals(factor, unit.factor(), 4e-16 * factor, spelling);
            assertEquals(base, unit.dim().toString(), spelling);
            assertEquals(0, unit.offset(), spelling);
        }
    }

    /** A reader in wide use takes 35 mm² for 0.035 m²; the brackets of the power decide. */
    @ParameterizedTest
    @ValueSource(strings = {"35 mm²", "35 mm2", "35 mm^2", "35mm²"})
    void aCableOf35SquareMillimetresIsNotAThousandTimesTooBig(String text) {
        assertEquals(35e-6, Quantity.of(text).si(), 1e-20);
    }

    @ParameterizedTest
    @CsvSource({"°C", "deg C", "degC", "℃"})
    void celsiusIsReadHoweverItIsTyped(String spelling) {
        assertEquals(Unit.of("°C"), Unit.of(spelling));
        assertEquals(273.15, Unit.of(spelling).toSi(0), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"°F", "deg F", "degF", "℉"})
    void fahrenheitIsReadHoweverItIsTyped(String spelling) {
        assertEquals(Unit.of("°F"), Unit.of(spelling));
        assertEquals(273.15, Unit.of(spelling).toSi(32), 1e-12);
    }

    /** Torque, energy per revolution and heat share a dimension: what was written is what prints. */
    @Test
    void whatWasWrittenIsWhatPrints() {
        assertEquals("N·m", Unit.of("Nm").text());
        assertEquals("mm²", Unit.of("mm2").text());
        assertEquals("lbf·ft", Unit.of("ft-lb").text());
        assertEquals("MΩ", Unit.of("MOhm").text());
        assertEquals("µF", Unit.of("uF").text());
        assertEquals("A·s^0.5/mm²", Unit.of("A*s^0.5/mm2").text());
        assertEquals("s^-2", Unit.of("s^-2").text());
        assertEquals("1/K", Unit.of("1/K").text());
        assertTrue(Unit.of("J").measuresLike(Unit.of("N·m")));
    }

    static Stream<Unit> everyUnitOfTheTable() {
        return UnitTable.units().values().stream().distinct();
    }

    @ParameterizedTest
    @MethodSource("everyUnitOfTheTable")
    void aPrintedUnitReadsBackAsItself(Unit unit) {
        assertEquals(unit, Unit.of(unit.text()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "furlong",
                "NM",
                "Mm^",
                "lb/",
                "m//s",
                "·m",
                "m·",
                "m*",
                "/",
                "°C/W",
                "W/°F",
                "m^99",
                "kg^x",
                "m^0.3",
                "K C",
                "m-s",
                "2",
                "kg m",
                "(m)",
                "km^9*km^9*km^9*km^9*km^9*km^9*km^9*km^9*km^9*km^9*km^9*km^9"
            })
    void anUnknownUnitIsRefusedByName(String spelling) {
        var refusal = assertThrows(UnknownUnit.class, () -> Unit.of(spelling));
        assertTrue(refusal.getMessage().startsWith("unknown unit `" + spelling + "`"), refusal.getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "C, °C",
        "c, °C",
        "f, °F",
        "KG, write kg",
        "Lbs, write lb",
        "KW, write kW",
        "kwh, write kWh",
        "AWG, designation",
        "/0 AWG, designation"
    })
    void aNearMissIsToldWhatToWrite(String spelling, String hint) {
        var refusal = assertThrows(UnknownUnit.class, () -> Unit.of(spelling));
        assertTrue(refusal.getMessage().contains(hint), refusal.getMessage());
    }

    @Test
    void noUnitAndOneAreTheBareNumber() {
        assertEquals(Unit.ONE, Unit.of(""));
        assertEquals(Unit.ONE, Unit.of(" 1 "));
        assertEquals("", Unit.ONE.text());
    }
}
