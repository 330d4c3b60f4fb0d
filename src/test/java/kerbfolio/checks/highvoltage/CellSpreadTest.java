package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** At most 30 mV at handover: common practice, no source. Two readings of ± 2 mV make U = 2·√2·2/√3 = 3.27 mV (by hand). */
class CellSpreadTest {
    private static Found spread(String highest) {
        return TractionText.sound()
                .with(
                        "readings.cells",
                        "{ instrument: cell-meter, date: 2026-09-30, highest: " + highest + ", lowest: 3.900 V }")
                .found(new CellSpread(), "cell groups");
    }

    @Test
    void cellGroupsCloseTogetherAreMet() {
        assertEquals(10, spread("3.910 V").value(), 1e-9);
        assertEquals(3.27, spread("3.910 V").reach(), 0.005);
        assertEquals(Verdict.MET, spread("3.926 V").verdict());
    }

    @Test
    void cellGroupsFarApartAreNotMet() {
        assertEquals(Verdict.NOT_MET, spread("3.934 V").verdict());
    }

    @Test
    void aSpreadAtItsLimitIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, spread("3.930 V").verdict());
    }

    @Test
    void aHighestUnderTheLowestIsNoReading() {
        assertEquals(Verdict.NO_EVIDENCE, spread("3.890 V").verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("readings.cells.highest", "readings.cells.lowest"),
                JobText.onTwoAxles().found(new CellSpread()).missing());
    }
}
