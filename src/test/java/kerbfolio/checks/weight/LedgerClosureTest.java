package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Examination;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** The scales say + 200 kg: 64 kg at the front, 136 kg at the rear, wheelbase 2500 mm. */
class LedgerClosureTest {
    private static final String WHOLE = "whole car";
    private static final String FRONT = "front axle";
    private static final String REAR = "rear axle";

    /** 300 kg in and 100 kg out at the places given, which closes when the moments make 136 kg at the rear. */
    private static JobText ledger(String in, String xIn, String out, String xOut) {
        return JobText.onTwoAxles().add("parts", part("box", in, xIn)).add("removed", part("engine", out, xOut));
    }

    private static String part(String id, String mass, String x) {
        return "{ id: " + id + ", instrument: pads, date: 2026-09-01, mass: " + mass + ", position: { x: " + x + " } }";
    }

    private static Found found(JobText job, String subject) {
        return job.found(new LedgerClosure(), subject);
    }

    /** By hand: 300 kg at 1133.333 mm less 100 kg at 0 mm make 136 kg at the rear. */
    private final JobText closed = ledger("300 kg", "1133.3333333 mm ± 5 mm", "100 kg", "0 mm ± 5 mm");

    @Test
    void aLedgerThatAgreesWithItsScalesIsMet() {
        for (String subject : List.of(WHOLE, FRONT, REAR)) {
            assertEquals(0, found(closed, subject).value(), 1e-6, subject);
            assertEquals(Verdict.MET, found(closed, subject).verdict());
        }
    }

    @Test
    void aPartNobodyWroteDownIsNotMet() {
        var job = ledger("280 kg", "1133 mm", "100 kg", "0 mm");
        assertEquals(Verdict.NOT_MET, found(job, WHOLE).verdict());
    }

    /** By hand: 200 mm wrong of 300 kg moves 24 kg from axle to axle; the total knows nothing of it. */
    @Test
    void aPartInTheWrongPlaceShowsOnTheAxlesOnly() {
        var job = ledger("300 kg", "1333 mm", "100 kg", "0 mm");
        assertEquals(Verdict.MET, found(job, WHOLE).verdict());
        assertEquals(Verdict.NOT_MET, found(job, FRONT).verdict());
        assertEquals(Verdict.NOT_MET, found(job, REAR).verdict());
    }

    /**
     * By hand: six readings of ± 1 kg, four of scales and two of parts, make U = 2·√6/√3 = 2.828 kg. A difference of that
     * is a score of 1, which is still met; there is nothing between met and not met, for the score has used up the doubt.
     */
    @Test
    void theScoreIsTheDifferenceOverItsOwnExpandedUncertainty() {
        assertEquals(
                1 / 2.828,
                found(ledger("301 kg", "0 mm", "100 kg", "0 mm"), WHOLE).value(),
                0.0005);
        assertEquals(
                Verdict.MET,
                found(ledger("302.8 kg", "0 mm", "100 kg", "0 mm"), WHOLE).verdict());
        assertEquals(
                Verdict.NOT_MET,
                found(ledger("302.9 kg", "0 mm", "100 kg", "0 mm"), WHOLE).verdict());
    }

    /** The larger the doubt, the easier a ledger closes: weighing badly is seen in the figures, not in the score. */
    @Test
    void aPlaceKnownOnlyByZoneClosesTheAxlesLoosely() {
        var sharp = ledger("300 kg", "1200 mm ± 5 mm", "100 kg", "0 mm");
        var vague = ledger("300 kg", "1200 mm ± 200 mm", "100 kg", "0 mm");
        assertEquals(Verdict.NOT_MET, found(sharp, REAR).verdict());
        assertEquals(Verdict.MET, found(vague, REAR).verdict());
    }

    @Test
    void randomLedgersConsistentWithTheirScalesClose() {
        var random = new Random(7);
        for (int i = 0; i < 25; i++) {
            double in = 100 + random.nextInt(300);
            double xIn = random.nextInt(3500) - 500;
            double out = 50 + random.nextInt(200);
            double xOut = random.nextInt(3500) - 500;
            double rear = (in * xIn - out * xOut) / 2500;
            double front = in - out - rear;
            var job = ledger(in + " kg", xIn + " mm", out + " kg", xOut + " mm")
                    .with("weighings.as-delivered.axles.front", 750 + front + " kg")
                    .with("weighings.as-delivered.axles.rear", 650 + rear + " kg");
            for (Examination.Row row : job.examined(new LedgerClosure()).rows()) {
                assertEquals(0, new Found(row.finding()).value(), 1e-9, job.toString());
            }
        }
    }

    @Test
    void publishedMassesAreStatedAndNotClosedAgainst() {
        closed.without("weighings.as-received.instrument").with("weighings.as-received.stated-by", "handbook");
        assertEquals(Verdict.NO_EVIDENCE, found(closed, WHOLE).verdict());
        assertTrue(
                found(closed, WHOLE).why().contains("published"),
                found(closed, WHOLE).why());
        assertEquals(List.of("weighings.as-received"), found(closed, WHOLE).missing());
    }

    @Test
    void differentThingsAboardCannotBeCompared() {
        closed.with("weighings.as-delivered.state", "{ occupants: \"1\", ballast: 0 kg }");
        assertEquals(Verdict.NO_EVIDENCE, found(closed, WHOLE).verdict());
        assertTrue(found(closed, WHOLE).why().contains("different things aboard"));
        closed.with("weighings.as-received.state", "{ occupants: \"1\", ballast: 0 kg }");
        assertEquals(Verdict.MET, found(closed, WHOLE).verdict());
        closed.with("weighings.as-received.state", "{ occupants: \"1\", ballast: 20 kg }");
        assertEquals(Verdict.NO_EVIDENCE, found(closed, WHOLE).verdict());
    }

    @Test
    void whatWasAboardAndNobodyWroteCannotBeCompared() {
        closed.without("weighings.as-received.state");
        assertEquals(Verdict.NO_EVIDENCE, found(closed, WHOLE).verdict());
        assertTrue(
                found(closed, WHOLE).why().contains("is not recorded"),
                found(closed, WHOLE).why());
    }

    @Test
    void aSideNobodyWroteAnythingOnIsNotASideWithoutMass() {
        var job = JobText.onTwoAxles().add("parts", part("box", "200 kg", "1700 mm"));
        assertEquals(Verdict.NO_EVIDENCE, found(job, WHOLE).verdict());
        assertEquals(List.of("removed"), found(job, WHOLE).missing());
    }

    @Test
    void aPartWithoutAPlaceClosesTheTotalButNoAxle() {
        var job = JobText.onTwoAxles()
                .add("parts", "{ id: box, mass: 300 kg ± 1 kg, mass-from: maker }")
                .add("removed", part("engine", "100 kg", "0 mm"));
        assertEquals(Verdict.MET, found(job, WHOLE).verdict());
        assertEquals(Verdict.NO_EVIDENCE, found(job, REAR).verdict());
        assertEquals(List.of("parts[box].position.x"), found(job, REAR).missing());
    }

    @Test
    void partsWeighedOnScalesOutOfCalibrationDoNotClear() {
        closed.add("instruments", "{ id: old, fixed: 1 kg, due: 2026-08-31 }")
                .add("parts", "{ id: strap, instrument: old, date: 2026-09-01, mass: 0 kg, position: { x: 0 mm } }");
        assertEquals(Verdict.MET_UNCONFIRMED, found(closed, WHOLE).verdict());
    }
}
