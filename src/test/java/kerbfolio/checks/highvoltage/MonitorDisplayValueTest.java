package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Rails of 150 kΩ and 300 kΩ are 100 kΩ in parallel; what a meter beside them reads follows from Kirchhoff's laws, by hand. */
class MonitorDisplayValueTest {
    private static Found read(String readings) {
        return Confirmed.fourHundredVolts()
                .add("readings.isolation", Confirmed.voltmeter("front-box", "pack-voltage: 400.0 V, " + readings))
                .found(new MonitorDisplayValue(), "iso");
    }

    @Test
    void aMonitorShowsBothRailsInParallel() {
        var one = read("minus-to-chassis: 242.424 V, plus-to-chassis: 121.212 V, meter-resistance: 1 MΩ");
        assertEquals(100, one.value(), 0.01);
        assertEquals("kΩ", one.unit());
        var ten = read("minus-to-chassis: 264.0264 V, plus-to-chassis: 132.0132 V, meter-resistance: 10 MΩ");
        assertEquals(100, ten.value(), 0.01);
        assertEquals(Verdict.NO_LIMIT, ten.verdict());
    }

    @Test
    void aMeterThatDrawsNothingTellsNothing() {
        var found = read("minus-to-chassis: 266.667 V, plus-to-chassis: 133.333 V, meter-resistance: 100 GΩ");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
    }

    @Test
    void aMeterOfUnknownResistanceIsNoEvidence() {
        var found = read("minus-to-chassis: 242.424 V, plus-to-chassis: 121.212 V");
        assertEquals(List.of("readings.isolation[iso].meter-resistance"), found.missing());
    }

    @Test
    void itIsPrintedForVoltmeterReadingsAloneAndHoldsNothing() {
        assertEquals(
                List.of("iso-1"),
                Confirmed.sound().examined(new MonitorDisplayValue()).rows().stream()
                        .map(row -> row.finding().subject())
                        .toList());
        assertTrue(JobText.blank().examined(new MonitorDisplayValue()).rows().isEmpty());
        assertEquals(Optional.empty(), new MonitorDisplayValue().gate());
    }
}
