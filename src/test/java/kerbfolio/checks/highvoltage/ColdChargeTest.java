package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A cold or a hot cell takes no charge. Rule of this program; a setting is there or it is not, so that nothing is too close to tell. */
class ColdChargeTest {
    private static final String SUBJECT = "monitor, charge-temperature-low";

    private static Found does(String action) {
        return MonitorText.with("at: 2 °C, does: stop-charge }", "at: 2 °C, does: " + action + " }")
                .found(new ColdCharge(), SUBJECT);
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
    void aHotCellTakesNoneEither() {
        assertEquals(
                Verdict.NOT_MET,
                MonitorText.with("at: 43 °C, does: stop-charge", "at: 43 °C, does: reduce")
                        .found(new ColdCharge(), "monitor, charge-temperature-high")
                        .verdict());
    }

    @Test
    void settingsNobodyStandsForDoNotClear() {
        var job = MonitorText.with("from: monitor settings, ", "");
        assertEquals(
                Verdict.MET_UNCONFIRMED, job.found(new ColdCharge(), SUBJECT).verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        var job = MonitorText.with("at: 2 °C, does: stop-charge }", "at: 2 °C }");
        assertEquals(
                List.of("pack.monitors[0].limits[4].does"),
                job.found(new ColdCharge(), SUBJECT).missing());
        assertEquals(
                List.of("pack.monitors.does"),
                JobText.onTwoAxles()
                        .found(new ColdCharge(), "battery monitor, charge-temperature-low")
                        .missing());
    }
}
