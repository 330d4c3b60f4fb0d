package kerbfolio.release;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSet;
import kerbfolio.check.Trade;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.PunchItem;
import kerbfolio.job.Waiver;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The gates of a job with checks whose findings a test chooses; the rule is that each is at least 0 kg. */
class ReleaseTest {
    /** A check of one finding. */
    private record Stub(String id, Optional<Gate> gate, String key, Term result, boolean isWaivable) implements Check {
        @Override
        public String question() {
            return "Is it?";
        }

        @Override
        public Stream<Finding> examine(Car car, Limits limits) {
            return Stream.of(Finding.judged("car", result, limits, key));
        }

        @Override
        public Trade trade() {
            return Trade.WEIGHT;
        }

        Stub unlimited() {
            return new Stub(id, gate, "no-such-key", result, isWaivable);
        }

        Stub unwaivable() {
            return new Stub(id, gate, key, result, false);
        }
    }

    private static Term figure(double kilograms, double expanded, String... reservations) {
        return new Known(
                "here",
                "margin",
                Quantity.of(kilograms + " kg"),
                new Amount(kilograms, Map.of("scales", expanded / 2)),
                Basis.MEASURED,
                "scales",
                List.of(reservations));
    }

    private static final Term MET = figure(10, 1);
    private static final Term NOT_MET = figure(-10, 1);
    private static final Term UNDECIDED = figure(0, 1);
    private static final Term UNCONFIRMED = figure(10, 1, "scales were out of calibration");
    private static final Term ABSENT = Absent.unrecorded("there", "margin", "kg");

    private static Stub stub(String id, Gate gate, Term result) {
        return new Stub(id, Optional.of(gate), "margin", result, true);
    }

    /** Asked of every gate a test does not speak of; it always has its figure. */
    private static final Stub CALM = new Stub("calm", Optional.empty(), "no-such-key", MET, true);

    private static RequirementSet set(String text) {
        try {
            return RecordReader.read("set.yaml", text.getBytes(UTF_8), RequirementSet.class)
                    .value();
        } catch (Complaints e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static final RequirementSet HOUSE = set(
            "{ set: house, title: House, limits: { margin: { meaning: margin, bound: at least, value: 0 kg, document:"
                    + " own, own-rule: yes } } }");

    private static Release release(JobText text, String evidence, Check... checks) {
        String asked = Stream.of("transport", "energise", "inspection")
                .filter(gate -> !evidence.contains(gate))
                .map(gate -> gate + ": { first: [calm] }")
                .reduce(evidence, (all, more) -> all.isEmpty() ? more : all + ", " + more);
        return asking(text, asked, Stream.concat(Stream.of(checks), Stream.of(CALM)));
    }

    private static Release asking(JobText text, String evidence, Stream<Check> checks) {
        var job = text.job();
        RequirementSet home = set("{ set: home, title: Home, evidence: { " + evidence + " } }");
        var limits = new Limits(home, HOUSE, List.of(), job);
        var car = new Car(job);
        return new Release(
                job, checks.map(check -> Examination.of(check, car, limits)).toList(), limits);
    }

    private static Release release(String evidence, Check... checks) {
        return release(JobText.blank(), evidence, checks);
    }

    private static GateReport gate(Release release, Gate gate) {
        return release.gates().stream()
                .filter(report -> report.gate() == gate)
                .findFirst()
                .orElseThrow();
    }

    private static GateState state(Release release, Gate gate) {
        return gate(release, gate).state();
    }

    private static List<String> reasons(Release release, Gate gate) {
        return gate(release, gate).reasons().stream().map(Reason::text).toList();
    }

    private static final String ASKS_FOR_A = "energise: { first: [a] }";

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
                List.of("scales were out of calibration (1 finding)"),
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
        var working = new Stub("a", Optional.empty(), "no-such-key", MET, true);
        assertEquals(GateState.NO_HOLD, state(release(ASKS_FOR_A, working), Gate.ENERGISE));
        var missing = new Stub("a", Optional.empty(), "no-such-key", ABSENT, true);
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

    private static final String PAPER = "{ kind: authority-paper, number: \"7\", date: 2026-09-30 }";

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

    // Waivers

    private static JobText waived(String finding) {
        return JobText.blank()
                .add("documents", PAPER)
                .add("waivers", "{ finding: " + finding + ", by: B. Reader, reason: trailer only }");
    }

    private static List<String> waivers(Release release, Gate gate) {
        return gate(release, gate).waivers().stream().map(Waiver::by).toList();
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

    // Punch list

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
        assertEquals("3", gate(release, Gate.ENERGISE).reasons().get(0).finding());
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

    // The whole program

    @Test
    void aJobThatSaysNothingOfHighVoltageIsNotExaminedForIt() {
        for (String tier : List.of("first", "inspection", "full")) {
            for (String set : List.of("un-ece", "us-federal")) {
                Release release = JobText.onFourCorners()
                        .with("job.tier", tier)
                        .homeSet(set)
                        .release();
                assertEquals(GateState.NOT_EXAMINED, state(release, Gate.ENERGISE));
                assertTrue(reasons(release, Gate.ENERGISE).toString().contains("does not examine high voltage"));
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
