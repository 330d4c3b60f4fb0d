package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.reading.RecordReaderTest.Crate;
import org.junit.jupiter.api.Test;

/** A figure is of the kind its key asks for, and else the complaint says what is. */
class FiguresTest {
    @Test
    void aFigureNeedsItsKindOfUnit() {
        String kilograms = "write a number and its unit: kg, lb, g, t, oz";
        assertEquals(List.of("f.yaml:2:7: mass: `12` has no unit; " + kilograms), figure("mass: 12"));
        assertEquals(
                List.of("f.yaml:2:7: mass: `12 m` is in m, which is another kind of unit; " + kilograms),
                figure("mass: 12 m"));
        assertEquals(List.of("f.yaml:2:7: mass: unknown unit `KG`; write kg; " + kilograms), figure("mass: 12 KG"));
        assertEquals(
                List.of("f.yaml:2:7: mass: `heavy` is not a figure with a unit; " + kilograms), figure("mass: heavy"));
        assertEquals(
                List.of("f.yaml:2:7: mass: `12,5 kg` is not a figure: its decimal sign is a point, its thousands stand"
                        + " without a separator; " + kilograms),
                figure("mass: 12,5 kg"));
        assertEquals(
                figure("mass: 12,5 kg").toString().replace("12,5", "1 250"),
                figure("mass: 1 250 kg").toString());
        assertEquals(
                List.of("f.yaml:2:7: mass: `-1 kg` is below zero, which this cannot be; write it without the minus"
                        + " sign"),
                figure("mass: -1 kg"));
        assertEquals(
                List.of("f.yaml:2:8: count: `3 kg` has a unit where none belongs; write a bare number, such as 4 or"
                        + " 0.95"),
                figure("count: 3 kg"));
        assertEquals(
                List.of("f.yaml:2:8: count: `.inf` is no number; write a bare number, such as 4 or 0.95"),
                figure("count: .inf"));
        assertEquals(List.of("f.yaml:2:7: mass: `NaN` is not a figure with a unit; " + kilograms), figure("mass: NaN"));
    }

    @Test
    void percentAnglesAndDifferencesOfTemperatureAreKindsOfTheirOwn() throws Exception {
        assertEquals(
                List.of(
                        "f.yaml:2:8: share: `5 °` is in °, which is another kind of unit; write a number and its unit: %"),
                figure("share: 5 °"));
        assertEquals(
                List.of("f.yaml:2:8: share: `0.5` has no unit; write a number and its unit: %"), figure("share: 0.5"));
        assertEquals(
                List.of(
                        "f.yaml:2:7: lean: `5 %` is in %, which is another kind of unit; write a number and its unit: °"),
                figure("lean: 5 %"));
        assertEquals(
                List.of("f.yaml:2:7: rise: `5 °C` is in °C, which is another kind of unit; write a number and its unit:"
                        + " K"),
                figure("rise: 5 °C"));
        assertEquals(
                List.of("f.yaml:2:10: warmest: `-300 °C` is below zero, which this cannot be; write it without the"
                        + " minus sign"),
                figure("warmest: -300 °C"));
        Crate cold = Refusal.read("id: a\nwarmest: -20 °C\nrise: 5 K\nlean: 0.1 rad\nerror: 5 mV", Crate.class);
        // 0 °C is 273.15 K (SI Brochure, 9th edition, 2.3.1).
        assertEquals(253.15, cold.warmest().si(), 1e-9);
        assertEquals(5, cold.rise().si());
    }

    private static List<String> figure(String line) {
        return Refusal.of("id: a\n" + line, Crate.class);
    }
}
