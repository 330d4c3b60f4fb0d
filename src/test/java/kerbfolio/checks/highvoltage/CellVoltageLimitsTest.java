package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A cell of 3.0 to 4.2 V, as the maker of the sound car's cell states it; margins by hand. */
class CellVoltageLimitsTest {
    private static Found high(String at) {
        return MonitorText.with("at: 4.15 V", "at: " + at).found(new CellVoltageLimits(), "monitor, cell-voltage-high");
    }

    private static Found low(String at) {
        return MonitorText.with("at: 3.1 V", "at: " + at).found(new CellVoltageLimits(), "monitor, cell-voltage-low");
    }

    @Test
    void limitsInsideThoseOfTheCellAreMet() {
        assertEquals(0.1, high("4.1 V").value(), 1e-9);
        assertEquals(Verdict.MET, high("4.2 V").verdict());
        assertEquals(0.2, low("3.2 V").value(), 1e-9);
        assertEquals(Verdict.MET, low("3.0 V").verdict());
    }

    @Test
    void limitsOutsideThemAreNotMet() {
        assertEquals(Verdict.NOT_MET, high("4.21 V").verdict());
        assertEquals(Verdict.NOT_MET, low("2.99 V").verdict());
    }

    @Test
    void aLimitKnownRoughlyIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, high("4.19 V ± 0.02 V").verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("pack.monitors[0].limits[0].at"),
                MonitorText.with(", at: 4.15 V", "")
                        .found(new CellVoltageLimits(), "monitor, cell-voltage-high")
                        .missing());
        var none = JobText.onTwoAxles().found(new CellVoltageLimits(), "battery monitor, cell-voltage-low");
        assertEquals(List.of("pack.monitors.at", "pack.cell.min-voltage"), none.missing());
    }
}
