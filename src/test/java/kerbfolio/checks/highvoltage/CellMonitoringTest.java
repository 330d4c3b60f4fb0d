package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: 8 modules of 4 cell groups and 2 temperature points are 32 and 16; 14 modules are 56 and 28. */
class CellMonitoringTest {
    private static Found found(JobText job, String subject) {
        return job.found(new CellMonitoring(), subject);
    }

    private static String words(Found found) {
        return found.finding().working().orElseThrow().inputs().get("w").get(0).origin();
    }

    @Test
    void aPackWatchedThroughoutIsMet() {
        TractionText.sound()
                .examined(new CellMonitoring())
                .rows()
                .forEach(row -> assertEquals(Verdict.MET, row.verdict(), row.id()));
        assertEquals(
                4, TractionText.sound().examined(new CellMonitoring()).rows().size());
    }

    @Test
    void cellGroupsNobodyWatchesAreCountedAndNamed() {
        var found = found(
                MonitorText.with("cell-groups: 1-56", "cell-groups: \"1-32, 34, 36-56\""), "cell groups of rear-box");
        assertEquals(2, found.value(), 1e-9);
        assertEquals(Verdict.NOT_MET, found.verdict());
        assertTrue(words(found).endsWith("nobody watches: 33, 35"), words(found));
    }

    @Test
    void temperaturePointsNobodyWatchesAreCountedAndNamed() {
        var found = found(
                MonitorText.with("temperature-points: 1-16", "temperature-points: \"2-16\""),
                "temperature points of front-box");
        assertEquals(1, found.value(), 1e-9);
        assertTrue(words(found).endsWith("nobody watches: 1"), words(found));
    }

    @Test
    void twoMonitorsWatchTogetherAndWhatBothWatchCountsOnce() {
        var job = MonitorText.with("cell-groups: 1-56", "cell-groups: 1-30")
                .add(
                        "pack.monitors",
                        "{ part: heater, watches: [ { part: rear-box, cell-groups: 28-56, temperature-points: \"1\" } ] }");
        assertEquals(Verdict.MET, found(job, "cell groups of rear-box").verdict());
        assertEquals(Verdict.MET, found(job, "temperature points of rear-box").verdict());
    }

    @Test
    void aBoxNoMonitorNamesIsWatchedByNone() {
        var found = found(
                MonitorText.with(", { part: rear-box, cell-groups: 1-56, temperature-points: 1-28 }", ""),
                "cell groups of rear-box");
        assertEquals(56, found.value(), 1e-9);
        assertEquals(Verdict.NOT_MET, found.verdict());
    }

    /** A count has no doubt, so that nothing of it is too close to tell; it leans on whoever states the modules. */
    @Test
    void aCountNobodyStandsForDoesNotClear() {
        var job = TractionText.sound().with("pack.module", "{ cell-groups: \"4\", temperature-points: \"2\" }");
        assertEquals(
                Verdict.MET_UNCONFIRMED, found(job, "cell groups of rear-box").verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("pack.boxes", "pack.module.cell-groups", "pack.monitors"),
                found(JobText.onTwoAxles(), "cell groups of the traction battery")
                        .missing());
        assertEquals(
                List.of("pack.monitors"),
                found(MonitorText.without(), "cell groups of rear-box").missing());
        assertEquals(
                List.of("pack.monitors[0].watches[1].temperature-points"),
                found(MonitorText.with(", temperature-points: 1-28", ""), "temperature points of rear-box")
                        .missing());
    }
}
