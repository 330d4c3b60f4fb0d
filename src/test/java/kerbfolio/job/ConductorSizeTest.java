package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import kerbfolio.job.ConductorSize.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Gauge numbers as ASTM B258 counts them: 1/0 is 0, 4/0 is -3. */
class ConductorSizeTest {
    @ParameterizedTest
    @CsvSource({
        "50 mm², SQUARE_MILLIMETRES, 50",
        "50 mm2, SQUARE_MILLIMETRES, 50",
        "2.5mm², SQUARE_MILLIMETRES, 2.5",
        "1/0 AWG, GAUGE, 0",
        "AWG 1/0, GAUGE, 0",
        "4/0 awg, GAUGE, -3",
        "0 AWG, GAUGE, 0",
        "2 AWG, GAUGE, 2",
        "AWG 10, GAUGE, 10",
        "250 kcmil, KCMIL, 250"
    })
    void aMarkingIsReadAsTheTradeWritesIt(String marked, Scale scale, double figure) {
        assertEquals(Optional.of(new ConductorSize(scale, figure, marked)), ConductorSize.of(marked));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "50",
                "50 mm",
                "0 mm²",
                "-50 mm²",
                "5/0 AWG",
                "00 AWG",
                "1/2 AWG",
                "40 AWG 2",
                "kcmil",
                "1e3 mm²"
            })
    void whatIsNoMarkingIsNone(String marked) {
        assertEquals(Optional.empty(), ConductorSize.of(marked));
    }
}
