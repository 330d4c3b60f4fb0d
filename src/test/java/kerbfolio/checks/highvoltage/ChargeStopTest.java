package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A full cell ends the charge. Rule of this program; a setting is there or it is not, so that nothing is too close to tell. */
class ChargeStopTest {
    private static final String SUBJECT = "monitor, cell-voltage-high";

    private static Found does(String action) {
        return MonitorText.with("at: 4.15 V, does: open-contactors }", "at: 4.15 V, does: " + action + " }")
                .found(new ChargeStop(), SUBJECT);
    }

    @Test
    void anActionThatStopsIsMet() {
        assertEquals(Verdict.MET, does("open-contactors").verdict());
        assertEquals(Verdict.MET, does("stop-charge").verdict());
    }

    @Test
    void anActionThatDoesNotStopIsNotMet() {
        assertEquals(Verdict.NOT_MET, does("none").verdict());
        assertEquals(Verdict.NOT_MET, does("warn").verdict());
        assertEquals(Verdict.NOT_MET, does("reduce").verdict());
        assertEquals(Verdict.NOT_MET, does("stop-drive").verdict());
    }

    @Test
    void nobodyMayWaveItThrough() {
        assertFalse(new ChargeStop().isWaivable());
    }

    @Test
    void settingsNobodyStandsForDoNotClear() {
        var job = MonitorText.with("from: monitor settings, ", "");
        assertEquals(
                Verdict.MET_UNCONFIRMED, job.found(new ChargeStop(), SUBJECT).verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        var job = MonitorText.with("at: 4.15 V, does: open-contactors }", "at: 4.15 V }");
        assertEquals(
                List.of("pack.monitors[0].limits[0].does"),
                job.found(new ChargeStop(), SUBJECT).missing());
        assertEquals(
                List.of("pack.monitors.does"),
                JobText.onTwoAxles()
                        .found(new ChargeStop(), "battery monitor, cell-voltage-high")
                        .missing());
    }
}
