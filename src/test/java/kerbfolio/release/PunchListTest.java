package kerbfolio.release;

import static kerbfolio.release.Gates.ASKS_FOR_A;
import static kerbfolio.release.Gates.PAPER;
import static kerbfolio.release.Gates.gate;
import static kerbfolio.release.Gates.reasons;
import static kerbfolio.release.Gates.release;
import static kerbfolio.release.Gates.state;
import static kerbfolio.release.Stub.ABSENT;
import static kerbfolio.release.Stub.stub;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.job.Gate;
import kerbfolio.job.PunchItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is still open holds its gate, and what holds a gate closes only on evidence. */
class PunchListTest {
    private static JobText item(String holds, String closed) {
        return JobText.blank()
                .add("documents", PAPER)
                .add("punch-list", "{ id: \"3\", text: hose rubs" + holds + closed + " }");
    }

    private static final String BY_NAME_AND_READING = ", closed: { by: A. Tester, reading: 20 mm clear }";

    @Test
    void anOpenItemHoldsItsGateAndThoseThatNeedIt() {
        Release release = release(item(", holds: energise", ""), "");
        assertEquals(GateState.NO_HOLD, state(release, Gate.TRANSPORT));
        assertEquals(List.of("punch list 3: hose rubs"), reasons(release, Gate.ENERGISE));
        assertEquals(GateState.HELD, state(release, Gate.ROAD));
        assertEquals(List.of("3"), gate(release, Gate.ENERGISE).reasons().get(0).findings());
    }

    @Test
    void whatHoldsStandsBeforeWhatIsNotExamined() {
        Release release = release(item(", holds: energise", ""), ASKS_FOR_A, stub("a", Gate.ENERGISE, ABSENT));
        assertEquals(
                List.of("punch list 3: hose rubs", "a, car: no evidence (not recorded: margin)"),
                reasons(release, Gate.ENERGISE));
    }

    @Test
    void anItemThatHoldsNothingHoldsNothing() {
        assertTrue(release(item(", holds: none", ""), "").isFree());
    }

    @Test
    void anItemClosedByNameAndReadingHoldsNoLonger() {
        assertTrue(release(item(", holds: energise", BY_NAME_AND_READING), "").isFree());
        assertFalse(release(item(", holds: energise", ", closed: { by: A. Tester }"), "")
                .isFree());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "holds: road,   closed: { by: A. Tester, reading: 20 mm }   | true",
                "holds: road,   closed: { by: A. Tester, photo: hose.jpg }  | true",
                "holds: road,   closed: { by: A. Tester }                   | false",
                "holds: road,   closed: { reading: 20 mm }                  | false",
                "holds: road,   closed: { by: A. Tester, reading: \"\" }    | false",
                "holds: road,   closed: { by: \" \", reading: 20 mm }       | false",
                "holds: road,   closed: { by: \"\", reading: 20 mm }        | false",
                "holds: none,   closed: { by: A. Tester }                   | true",
                "holds: none,   closed: { date: 2026-09-01 }                | false",
                "holds: none                                                | false"
            })
    void anItemThatHoldsClosesOnlyWithANameAndAReadingOrPhoto(String keys, boolean isClosed) {
        PunchItem item = item("", ", " + keys).job().punchList().get(0);
        assertEquals(isClosed, Release.isClosed(item));
    }
}
