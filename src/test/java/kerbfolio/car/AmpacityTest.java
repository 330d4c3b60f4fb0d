package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.formula.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmpacityTest {
    private static final String STATED = "ampacity: 330 A, ampacity-at: 40 °C";

    private static Working of(JobText job) {
        Car car = job.car();
        return car.circuit().links().stream()
                .filter(each -> each.id().equals("c-plus"))
                .map(link -> car.conductor(link).ampacity())
                .findFirst()
                .orElseThrow();
    }

    private static JobText cable(String most, String ambient, String reference) {
        return TractionText.sound()
                .alter(
                        "links",
                        "c-plus",
                        "150 °C, " + STATED + ", ambient: 60 °C",
                        most + ", ampacity: 100 A, ampacity-at: " + reference + ", ambient: " + ambient);
    }

    /** NEC table 310.15(B)(1) at the upper edge of each row, 30 °C base, as a residential code reprints it; ±0.01. */
    @ParameterizedTest
    @CsvSource({
        "90 °C, 50 °C, 0.82",
        "75 °C, 40 °C, 0.88",
        "60 °C, 55 °C, 0.41",
        "90 °C, 60 °C, 0.71",
        "60 °C, 35 °C, 0.91",
        "75 °C, 60 °C, 0.58"
    })
    void theCorrectionIsThatOfTheCodeTable(String most, String ambient, double factor) {
        assertEquals(factor, Found.value(of(cable(most, ambient, "30 °C"))) / 100, 0.01);
    }

    /** By hand: (125 - 80)/(125 - 25) = 0.45, root 0.6708; (150 - 60)/(150 - 40) = 0.8182, root 0.9045. */
    @Test
    void anyBaseWillDo() {
        assertEquals(67.08, Found.value(of(cable("125 °C", "80 °C", "25 °C"))), 0.005);
        assertEquals(330 * 0.9045, Found.value(of(TractionText.sound())), 0.02);
        assertEquals(100 * Math.sqrt(1.2), Found.value(of(cable("90 °C", "30 °C", "40 °C"))), 1e-9);
    }

    @Test
    void atTheMakersAmbientNothingIsCorrected() {
        var random = new Random(183);
        for (int i = 0; i < 20; i++) {
            int most = 70 + random.nextInt(130);
            int at = random.nextInt(60);
            assertEquals(100, Found.value(of(cable(most + " °C", at + " °C", at + " °C"))), 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"90 °C, 90 °C, 30 °C", "90 °C, 110 °C, 30 °C", "90 °C, 40 °C, 90 °C"})
    void anAmbientAtTheLimitOfTheConductorGivesNoNumber(String most, String ambient, String reference) {
        Working none = of(cable(most, ambient, reference));
        assertTrue(none.amount().isEmpty());
        assertTrue(none.origin().contains("which does not hold"), none.origin());
    }

    /** 33 CFR 183.425, Table 5: 2/0 at 105 °C carries 330 A; 70 mm² is 2/0 and a little, 50 mm² is only 1 AWG: 245 A. */
    @ParameterizedTest
    @CsvSource({
        "2/0 AWG, 105 °C, 330",
        "4/0 AWG, 105 °C, 445",
        "6 AWG, 105 °C, 120",
        "70 mm², 150 °C, 330",
        "50 mm², 105 °C, 245",
        "2 AWG, 80 °C, 170",
        "250 kcmil, 90 °C, 385"
    })
    void withoutAMakersFigureATableMayHoldAndNotClear(String size, String most, double amperes) {
        Working tabled = of(TractionText.sound()
                .confirming("tables", "conductor-ampacity")
                .alter("links", "c-plus", "150 °C, " + STATED + ", ambient: 60 °C", most + ", ambient: 30 °C")
                .alter("links", "c-plus", "size: 70 mm²,", "size: " + size + " ,"));
        assertEquals(amperes, Found.value(tabled), 1e-9);
        assertEquals(
                List.of("the ampacity of c-plus is not its maker's but that of a table for boats"),
                tabled.reservations());
    }

    @Test
    void withoutSizeOrAmbientThereIsNoFigure() {
        Working bare = of(TractionText.sound()
                .alter("links", "c-plus", STATED + ", ", "")
                .alter("links", "c-plus", "size: 70 mm², ", ""));
        assertEquals(
                List.of("links[c-plus].ampacity", "links[c-plus].ampacity-at"),
                bare.missing().stream().map(absent -> absent.path()).toList());
        Working cold = of(TractionText.sound().alter("links", "c-plus", "ambient: 60 °C, ", ""));
        assertEquals(
                List.of("links[c-plus].ambient"),
                cold.missing().stream().map(absent -> absent.path()).toList());
    }
}
