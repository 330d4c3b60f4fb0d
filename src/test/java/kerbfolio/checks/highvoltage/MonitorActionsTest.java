package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** An empty or a hot cell ends the drive. Rule of this program; a setting is there or it is not, so that nothing is too close to tell. */
class MonitorActionsTest {
    private static final String SUBJECT = "monitor, cell-voltage-low";

    private static Found does(String action) {
        return MonitorText.with("at: 3.1 V, does: open-contactors }", "at: 3.1 V, does: " + action + " }")
                .found(new MonitorActions(), SUBJECT);
    }

    @Test
    void anActionThatStopsIsMet() {
        assertEquals(Verdict.MET, does("open-contactors").verdict());
        assertEquals(Verdict.MET, does("stop-drive").verdict());
    }

    @Test
    void anActionThatDoesNotStopIsNotMet() {
        assertEquals(Verdict.NOT_MET, does("none").verdict());
        assertEquals(Verdict.NOT_MET, does("warn").verdict());
        assertEquals(Verdict.NOT_MET, does("reduce").verdict());
        assertEquals(Verdict.NOT_MET, does("stop-charge").verdict());
    }

    @Test
    void aHotCellEndsItToo() {
        assertEquals(
                Verdict.NOT_MET,
                MonitorText.with("at: 55 °C, does: open-contactors", "at: 55 °C, does: warn")
                        .found(new MonitorActions(), "monitor, temperature-high")
                        .verdict());
    }

    @Test
    void settingsNobodyStandsForDoNotClear() {
        var job = MonitorText.with("from: monitor settings, ", "");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                job.found(new MonitorActions(), SUBJECT).verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        var job = MonitorText.with("at: 3.1 V, does: open-contactors }", "at: 3.1 V }");
        assertEquals(
                List.of("pack.monitors[0].limits[1].does"),
                job.found(new MonitorActions(), SUBJECT).missing());
        assertEquals(
                List.of("pack.monitors.does"),
                JobText.onTwoAxles()
                        .found(new MonitorActions(), "battery monitor, cell-voltage-low")
                        .missing());
    }
}
