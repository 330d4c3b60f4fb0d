package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A cell of -20 to 60 °C, in charge 0 to 45 °C, as the maker of the sound car's cell states it; margins by hand. */
class CellTemperatureLimitsTest {
    private static Found found(String on, String from, String to) {
        return MonitorText.with(from, to).found(new CellTemperatureLimits(), "monitor, " + on);
    }

    @Test
    void limitsInsideThoseOfTheCellAreMet() {
        assertEquals(10, found("temperature-high", "at: 55 °C", "at: 50 °C").value(), 1e-9);
        assertEquals(
                Verdict.MET, found("temperature-high", "at: 55 °C", "at: 60 °C").verdict());
        assertEquals(
                Verdict.MET,
                found("temperature-low", "at: -15 °C", "at: -20 °C").verdict());
        assertEquals(
                2, found("charge-temperature-high", "at: 55 °C", "at: 54 °C").value(), 1e-9);
        assertEquals(
                Verdict.MET,
                found("charge-temperature-low", "at: 2 °C", "at: 0 °C").verdict());
    }

    @Test
    void limitsOutsideThemAreNotMet() {
        assertEquals(
                Verdict.NOT_MET,
                found("temperature-high", "at: 55 °C", "at: 61 °C").verdict());
        assertEquals(
                Verdict.NOT_MET,
                found("temperature-low", "at: -15 °C", "at: -21 °C").verdict());
        assertEquals(
                Verdict.NOT_MET,
                found("charge-temperature-high", "at: 43 °C", "at: 46 °C").verdict());
        assertEquals(
                Verdict.NOT_MET,
                found("charge-temperature-low", "at: 2 °C", "at: -1 °C").verdict());
    }

    /** 140 °F are 60 °C. */
    @Test
    void degreesOfAnotherScaleAreTheSameDegrees() {
        assertEquals(0, found("temperature-high", "at: 55 °C", "at: 140 °F").value(), 1e-9);
    }

    @Test
    void aLimitKnownRoughlyIsTooCloseToTell() {
        assertEquals(
                Verdict.UNDECIDED,
                found("charge-temperature-low", "at: 2 °C", "at: 1 °C ± 2 °C").verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("pack.monitors[0].limits.at"),
                found("temperature-low", "{ on: temperature-low, at: -15 °C, does: reduce },", "")
                        .missing());
        assertEquals(
                List.of("pack.monitors.at", "pack.cell.min-charge-temperature"),
                JobText.onTwoAxles()
                        .found(new CellTemperatureLimits(), "battery monitor, charge-temperature-low")
                        .missing());
    }
}
