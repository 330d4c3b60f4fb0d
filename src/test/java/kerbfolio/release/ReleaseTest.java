package kerbfolio.release;

import static kerbfolio.release.Gates.ASKS_FOR_A;
import static kerbfolio.release.Gates.CALM;
import static kerbfolio.release.Gates.PAPER;
import static kerbfolio.release.Gates.asking;
import static kerbfolio.release.Gates.reasons;
import static kerbfolio.release.Gates.release;
import static kerbfolio.release.Gates.state;
import static kerbfolio.release.Stub.ABSENT;
import static kerbfolio.release.Stub.MET;
import static kerbfolio.release.Stub.NOT_MET;
import static kerbfolio.release.Stub.UNCONFIRMED;
import static kerbfolio.release.Stub.UNDECIDED;
import static kerbfolio.release.Stub.stub;
import static kerbfolio.release.Stub.working;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/** Held before not examined before no hold recorded, each with its reasons. */
class ReleaseTest {
    @Test
    void whatIsAskedForAndMetLeavesNoHold() {
        Release release = release(ASKS_FOR_A, stub("a", Gate.ENERGISE, MET));
        assertEquals(GateState.NO_HOLD, state(release, Gate.ENERGISE));
        assertEquals(List.of(), reasons(release, Gate.ENERGISE));
    }

    @Test
    void whatIsNotMetHoldsWhetherItWasAskedForOrNot() {
        for (String evidence : List.of(ASKS_FOR_A, "")) {
            Release release = release(evidence, stub("a", Gate.ENERGISE, NOT_MET));
            assertEquals(GateState.HELD, state(release, Gate.ENERGISE));
            assertEquals(List.of("a, car: not met"), reasons(release, Gate.ENERGISE));
        }
    }

    @Test
    void whatIsAskedForAndNotClearedIsNotExamined() {
        for (Term result : List.of(UNDECIDED, UNCONFIRMED, ABSENT)) {
            Release release = release(ASKS_FOR_A, stub("a", Gate.ENERGISE, result));
            assertEquals(GateState.NOT_EXAMINED, state(release, Gate.ENERGISE), result.toString());
        }
        assertEquals(
                List.of("a, car: undecided"),
                reasons(release(ASKS_FOR_A, stub("a", Gate.ENERGISE, UNDECIDED)), Gate.ENERGISE));
        assertEquals(
                List.of("a, car: no evidence (not recorded: margin)"),
                reasons(release(ASKS_FOR_A, stub("a", Gate.ENERGISE, ABSENT)), Gate.ENERGISE));
        assertEquals(
                List.of("a, car: met, unconfirmed (scales were out of calibration)"),
                reasons(release(ASKS_FOR_A, stub("a", Gate.ENERGISE, UNCONFIRMED)), Gate.ENERGISE));
    }

    @Test
    void whatIsNotAskedForAndNotKnownHoldsNothing() {
        for (Term result : List.of(UNCONFIRMED, ABSENT)) {
            assertEquals(GateState.NO_HOLD, state(release("", stub("a", Gate.ENERGISE, result)), Gate.ENERGISE));
        }
    }

    @Test
    void aFigureTooCloseToTellIsNeverPassedOver() {
        Release release = release("", stub("a", Gate.ENERGISE, UNDECIDED));
        assertEquals(GateState.NOT_EXAMINED, state(release, Gate.ENERGISE));
        assertEquals(List.of("a, car: undecided"), reasons(release, Gate.ENERGISE));
    }

    @Test
    void aGateNobodyAsksAnythingForIsNotExamined() {
        Release release = asking(JobText.blank(), "energise: { first: [calm] }", Stream.of(CALM));
        assertEquals(GateState.NOT_EXAMINED, state(release, Gate.TRANSPORT));
        assertEquals(List.of("no requirement set asks anything for this gate"), reasons(release, Gate.TRANSPORT));
        assertEquals(GateState.NO_HOLD, state(release, Gate.ENERGISE));
    }

    /** A set that asks for a check and forgets its figure does not thereby clear a car that is 10 kg too heavy. */
    @Test
    void whatIsAskedForWithoutALimitIsNotExamined() {
        Release release = release(ASKS_FOR_A, stub("a", Gate.ENERGISE, NOT_MET).unlimited());
        assertEquals(GateState.NOT_EXAMINED, state(release, Gate.ENERGISE));
        assertEquals(List.of("a, car: no limit is given by the home set"), reasons(release, Gate.ENERGISE));
    }

    @Test
    void aWorkingThatIsAskedForNeedsOnlyItsFigure() {
        var working = working("a", MET);
        assertEquals(GateState.NO_HOLD, state(release(ASKS_FOR_A, working), Gate.ENERGISE));
        var missing = working("a", ABSENT);
        assertEquals(GateState.NOT_EXAMINED, state(release(ASKS_FOR_A, missing), Gate.ENERGISE));
    }

    @Test
    void heldComesBeforeNotExamined() {
        Release release = release(
                "energise: { first: [a, b, brakes] }",
                stub("a", Gate.ENERGISE, ABSENT),
                stub("b", Gate.ENERGISE, NOT_MET));
        assertEquals(GateState.HELD, state(release, Gate.ENERGISE));
        assertEquals(
                List.of(
                        "b, car: not met",
                        "a, car: no evidence (not recorded: margin)",
                        "this version does not examine brakes"),
                reasons(release, Gate.ENERGISE));
    }

    @Test
    void oneReasonStandsForAllFindingsThatShareIt() {
        Release release = release(
                "energise: { first: [weight] }",
                stub("a", Gate.ENERGISE, UNCONFIRMED),
                stub("b", Gate.ENERGISE, UNCONFIRMED));
        assertEquals(List.of("scales were out of calibration (2 findings)"), reasons(release, Gate.ENERGISE));
    }

    /** A gate that asks for what another gate is held by is held by it too. */
    @Test
    void whatAGateAsksForHoldsItThoughItBelongsToAnother() {
        Release release = release("transport: { first: [a] }", stub("a", Gate.INSPECTION, NOT_MET));
        assertEquals(GateState.HELD, state(release, Gate.TRANSPORT));
        assertEquals(GateState.HELD, state(release, Gate.INSPECTION));
    }

    @Test
    void aGateNeedsTheGatesBeforeIt() {
        Release release = release("", stub("a", Gate.ENERGISE, NOT_MET));
        assertEquals(GateState.NO_HOLD, state(release, Gate.TRANSPORT));
        assertEquals(GateState.HELD, state(release, Gate.ENERGISE));
        assertEquals(List.of("gate energise: held"), reasons(release, Gate.INSPECTION));
        assertEquals(
                List.of(
                        "gate inspection: held",
                        "the authority's paper is not recorded in documents with number and date"),
                reasons(release, Gate.ROAD));
        assertFalse(release.isFree());
    }

    @Test
    void noProgramClearsARoad() {
        Release without = release("", stub("a", Gate.ENERGISE, MET));
        assertEquals(GateState.NO_HOLD, state(without, Gate.INSPECTION));
        assertEquals(GateState.NOT_EXAMINED, state(without, Gate.ROAD));
        assertFalse(without.isFree());
        for (String other : List.of(
                "{ kind: insurance, number: \"7\", date: 2026-09-30 }",
                "{ kind: authority-paper, number: \"7\" }",
                "{ kind: authority-paper, date: 2026-09-30 }")) {
            Release release = release(JobText.blank().add("documents", other), "");
            assertEquals(GateState.NOT_EXAMINED, state(release, Gate.ROAD), other);
        }
        Release with = release(JobText.blank().add("documents", PAPER), "", stub("a", Gate.ENERGISE, MET));
        assertEquals(GateState.NO_HOLD, state(with, Gate.ROAD));
        assertTrue(with.isFree());
    }

    @Test
    void aJobThatSaysNothingOfHighVoltageIsNotExaminedForIt() {
        for (String tier : List.of("first", "inspection", "full")) {
            for (String set : List.of("un-ece", "us-federal")) {
                Release release = JobText.onFourCorners()
                        .with("job.tier", tier)
                        .homeSet(set)
                        .release();
                assertEquals(GateState.NOT_EXAMINED, state(release, Gate.ENERGISE));
                assertTrue(reasons(release, Gate.ENERGISE).toString().contains("isolation resistance, isolation"));
            }
        }
    }

    @Test
    void whatIsSilentIsNotPrintedUnlessItIsAskedFor() {
        Release release = release(
                ASKS_FOR_A,
                stub("a", Gate.ENERGISE, ABSENT),
                stub("b", Gate.ENERGISE, ABSENT),
                stub("c", Gate.ENERGISE, MET));
        assertEquals(
                List.of("a", "c", "calm"),
                release.spoken().stream()
                        .map(examination -> examination.check().id())
                        .toList());
    }
}
