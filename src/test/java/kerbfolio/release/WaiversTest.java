package kerbfolio.release;

import static kerbfolio.release.Gates.ASKS_FOR_A;
import static kerbfolio.release.Gates.PAPER;
import static kerbfolio.release.Gates.release;
import static kerbfolio.release.Gates.state;
import static kerbfolio.release.Gates.waivers;
import static kerbfolio.release.Stub.ABSENT;
import static kerbfolio.release.Stub.MET;
import static kerbfolio.release.Stub.NOT_MET;
import static kerbfolio.release.Stub.UNCONFIRMED;
import static kerbfolio.release.Stub.UNDECIDED;
import static kerbfolio.release.Stub.stub;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/** What somebody lets pass by name and reason, and what nobody may. */
class WaiversTest {
    private static JobText waived(String finding) {
        return JobText.blank()
                .add("documents", PAPER)
                .add("waivers", "{ finding: " + finding + ", by: B. Reader, reason: trailer only }");
    }

    @Test
    void whatIsWaivedByNameDoesNotHoldAndIsListed() {
        for (Term result : List.of(NOT_MET, UNDECIDED, UNCONFIRMED, ABSENT)) {
            Release release = release(waived("a/car"), ASKS_FOR_A, stub("a", Gate.ENERGISE, result));
            assertEquals(GateState.NO_HOLD, state(release, Gate.ENERGISE), result.toString());
            assertEquals(List.of("B. Reader"), waivers(release, Gate.ENERGISE), result.toString());
            // It is listed with every gate that leans on it, and with no other.
            assertEquals(List.of("B. Reader"), waivers(release, Gate.ROAD));
            assertEquals(List.of(), waivers(release, Gate.TRANSPORT));
        }
    }

    @Test
    void aFigureTooCloseToTellCanBeWaivedThoughNobodyAsksForIt() {
        Release release = release(waived("a/car"), "", stub("a", Gate.ENERGISE, UNDECIDED));
        assertEquals(GateState.NO_HOLD, state(release, Gate.ENERGISE));
        assertEquals(List.of("B. Reader"), waivers(release, Gate.ENERGISE));
    }

    @Test
    void aWaiverOfWhatIsMetIsNotLeantOn() {
        Release release = release(waived("a/car"), ASKS_FOR_A, stub("a", Gate.ENERGISE, MET));
        assertEquals(List.of(), waivers(release, Gate.ENERGISE));
    }

    @Test
    void aWaiverOfSomethingElseChangesNothing() {
        for (String other : List.of("b/car", "a", "a/wheel")) {
            Release release = release(waived(other), ASKS_FOR_A, stub("a", Gate.ENERGISE, NOT_MET));
            assertEquals(GateState.HELD, state(release, Gate.ENERGISE), other);
        }
    }

    @Test
    void someFindingsCannotBeWaived() {
        Release held = release(
                waived("a/car"), ASKS_FOR_A, stub("a", Gate.ENERGISE, NOT_MET).unwaivable());
        assertEquals(GateState.HELD, state(held, Gate.ENERGISE));
        assertEquals(List.of(), waivers(held, Gate.ENERGISE));
        Release missing = release(
                waived("a/car"), ASKS_FOR_A, stub("a", Gate.ENERGISE, ABSENT).unwaivable());
        assertEquals(GateState.NOT_EXAMINED, state(missing, Gate.ENERGISE));
    }

    @Test
    void whatDoesNotApplyByNameAndReasonClears() {
        var job = JobText.blank().add("not-applicable", "{ check: a, by: B. Reader, reason: no such part }");
        assertEquals(
                GateState.NO_HOLD, state(release(job, ASKS_FOR_A, stub("a", Gate.ENERGISE, ABSENT)), Gate.ENERGISE));
        assertEquals(GateState.HELD, state(release(job, ASKS_FOR_A, stub("a", Gate.ENERGISE, NOT_MET)), Gate.ENERGISE));
    }
}
