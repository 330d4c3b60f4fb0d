package kerbfolio.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerbfolio.JobText;
import kerbfolio.checks.weight.GrossMargin;
import kerbfolio.checks.weight.SeatedGrossMargin;
import kerbfolio.formula.Basis;
import kerbfolio.job.Gate;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import org.junit.jupiter.api.Test;

class LimitsTest {
    private static RequirementSet set(String text) {
        try {
            return RecordReader.read("set.yaml", text.getBytes(UTF_8), RequirementSet.class)
                    .value();
        } catch (Complaints e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static String rule(String key, String value) {
        return key + ": { meaning: words, bound: at most, value: " + value + ", document: book, clause: \"2\" }";
    }

    private static final RequirementSet HOME = set("{ set: home, title: Home, documents: { book: { title: A book, "
            + "edition: third } }, limits: { " + rule("a", "1 kg") + ", " + rule("b", "2 kg") + " } }");
    private static final RequirementSet HOUSE =
            set("{ set: house, title: House, limits: { " + rule("b", "20 kg") + ", " + rule("c", "30 kg") + " } }");
    private static final RequirementSet OTHER =
            set("{ set: other, title: Other, limits: { " + rule("b", "200 kg") + ", " + rule("d", "400 kg") + " } }");

    private static final Limits LIMITS =
            new Limits(HOME, HOUSE, List.of(OTHER), JobText.blank().job());

    private static Optional<String> value(String key) {
        return LIMITS.find(key).map(limit -> limit.value().text());
    }

    @Test
    void theHomeSetRulesAndTheHouseStandsBelowIt() {
        assertEquals(Optional.of("1 kg"), value("a"));
        assertEquals(Optional.of("2 kg"), value("b"));
        assertEquals(Optional.of("30 kg"), value("c"));
    }

    @Test
    void othersAreComparedAndHoldNothing() {
        assertEquals(Optional.empty(), value("d"));
        assertEquals(
                List.of("200 kg"),
                LIMITS.others("b").stream().map(limit -> limit.value().text()).toList());
        assertEquals(List.of(), LIMITS.others("a"));
        assertEquals("Home", LIMITS.home().title());
        assertEquals(List.of(OTHER), LIMITS.compared());
    }

    @Test
    void aLimitCitesItsDocumentWithEditionAndClause() {
        assertEquals(
                "A book, third, 2", LIMITS.find("a").orElseThrow().citation().toString());
        // A document the set does not describe is called by its key.
        assertEquals("book, 2", LIMITS.find("c").orElseThrow().citation().toString());
    }

    @Test
    void aFormulaTakesItsFigureFromTheSet() {
        assertEquals(2, LIMITS.term("b", "kg").amount().orElseThrow().si());
        var absent = LIMITS.term("d", "kg");
        assertEquals(Basis.ABSENT, absent.basis());
        assertEquals("the home set gives no such figure", absent.origin());
        assertEquals("requirement set home", absent.missing().get(0).path());
    }

    @Test
    void aFigureStandsUnconfirmedUntilSomebodyReadIt() {
        Standing standing = LIMITS.find("a").orElseThrow().standing();
        assertFalse(standing.isConfirmed());
        assertEquals("unconfirmed", standing.toString());
    }

    @Test
    void theJobFileConfirmsByNameEditionAndDay() {
        var limits = new Limits(
                HOME,
                HOUSE,
                List.of(OTHER),
                JobText.blank().confirming("home", "a").job());
        Standing standing = limits.find("a").orElseThrow().standing();
        assertTrue(standing.isConfirmed());
        assertEquals("confirmed by B. Reader, 2026-09-01, 2020", standing.toString());
        assertFalse(limits.find("b").orElseThrow().standing().isConfirmed());
        assertFalse(limits.find("c").orElseThrow().standing().isConfirmed());
    }

    @Test
    void aSetMayCarryItsOwnReader() {
        RequirementSet read =
                set("{ set: home, title: Home, limits: { a: { meaning: words, bound: at most, value: 1 kg,"
                        + " document: book, confirmed: { by: C. Holder, edition: fourth, date: 2026-02-03 } } } }");
        var limits = new Limits(read, HOUSE, List.of(), JobText.blank().job());
        assertEquals(
                "confirmed by C. Holder, 2026-02-03, fourth",
                limits.find("a").orElseThrow().standing().toString());
        assertEquals("book", limits.find("a").orElseThrow().citation().toString());
    }

    @Test
    void onlyTheProgramsOwnRulesNeedNoDocument() {
        RequirementSet own = set("{ set: own, title: Own, limits: { a: { meaning: words, bound: at most, value: 1 kg,"
                + " document: own, own-rule: yes } } }");
        var job = JobText.blank().job();
        assertEquals(
                Standing.OWN_RULE,
                new Limits(OTHER, own, List.of(), job).find("a").orElseThrow().standing());
        // A shop's file cannot vouch for itself.
        assertEquals(
                Standing.UNCONFIRMED,
                new Limits(own, HOUSE, List.of(), job).find("a").orElseThrow().standing());
    }

    @Test
    void aConfirmationLiftsUnconfirmedFromTheVerdict() {
        var job = JobText.onTwoAxles().without("confirmations").with("job.compared-with", "[us-federal]");
        assertEquals(Verdict.MET_UNCONFIRMED, job.found(new GrossMargin()).verdict());
        job.confirming("us-federal", "gross-margin");
        assertEquals(Verdict.MET_UNCONFIRMED, job.found(new GrossMargin()).verdict());
        job.confirming("un-ece", "gross-margin");
        assertEquals(Verdict.MET, job.found(new GrossMargin()).verdict());
    }

    @Test
    void anUnconfirmedFigureInsideAFormulaIsNotForgotten() {
        var job = JobText.onTwoAxles().homeSet("us-federal").confirming("us-federal", "gross-margin");
        assertEquals(Verdict.MET_UNCONFIRMED, job.found(new SeatedGrossMargin()).verdict());
        job.confirming("us-federal", "occupant-mass");
        assertEquals(Verdict.MET, job.found(new SeatedGrossMargin()).verdict());
    }

    private static Set<String> evidence(String tier, Gate gate) {
        RequirementSet home = set(
                "{ set: home, title: Home, evidence: { energise: { first: [a], inspection: [b], full:" + " [c] } } }");
        RequirementSet house = set("{ set: house, title: House, evidence: { energise: { first: [d, a] } } }");
        return new Limits(
                        home,
                        house,
                        List.of(OTHER),
                        JobText.blank().with("job.tier", tier).job())
                .evidence(gate);
    }

    @Test
    void eachTierAsksForItsOwnAndForAllBelowIt() {
        assertEquals(List.of("a", "d"), List.copyOf(evidence("first", Gate.ENERGISE)));
        assertEquals(List.of("a", "b", "d"), List.copyOf(evidence("inspection", Gate.ENERGISE)));
        assertEquals(List.of("a", "b", "c", "d"), List.copyOf(evidence("full", Gate.ENERGISE)));
        assertEquals(Set.of(), evidence("full", Gate.ROAD));
    }
}
