package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/**
 * A charge counts as a load without end: NFPA 70, 625.41 and 210.20(A), read on public pages, ask 125 %, which makes a
 * breaker of 30 A of 24 A, 40 of 32, 50 of 40 and 60 of 48.
 */
class SupplyCurrentTest {
    private static final List<List<String>> PAIRS = List.of(
            List.of("40 %", "24 A", "30 A", "29 A"),
            List.of("53.333333 %", "32 A", "40 A", "39 A"),
            List.of("66.666667 %", "40 A", "50 A", "49 A"),
            List.of("80 %", "48 A", "60 A", "59 A"));

    private static JobText job(String duty, String charger, String breaker) {
        return TractionText.sound()
                .with("job.home-set", "us-federal")
                .without("confirmations")
                .confirming("tables", "pilot-current")
                .confirming("us-federal", "supply-current")
                .alter(
                        "parts",
                        "charger",
                        "input-current: 32 A, phases: \"1\"",
                        "phases: \"1\", input-current: " + charger)
                .with(
                        "readings.charge",
                        "{ instrument: pilot-meter, date: 2026-09-30, duty: " + duty
                                + ", supply-from: A. Tester, breaker: " + breaker + " }");
    }

    private static Found found(String duty, String charger, String breaker) {
        return job(duty, charger, breaker).found(new SupplyCurrent(), "charger");
    }

    /** What the pilot signal offers is what the supply is built for; a meter leaves the exact rule too close to tell. */
    @Test
    void theNextBreakerUpIsAHundredAndTwentyFiveInAHundred() {
        for (List<String> pair : PAIRS) {
            assertEquals(125, found(pair.get(0), "80 A", pair.get(2)).value(), 0.001);
            assertEquals(
                    Verdict.UNDECIDED, found(pair.get(0), "80 A", pair.get(2)).verdict());
            assertEquals(
                    Verdict.NOT_MET, found(pair.get(0), "80 A", pair.get(3)).verdict());
        }
        assertEquals(Verdict.MET, found("40 %", "80 A", "31 A").verdict());
    }

    /** A small charger does not make the supply's breaker larger: 32 A offered, 16 A taken, 20 A is 62.5 in a hundred. */
    @Test
    void aChargerThatTakesLessChangesNothing() {
        assertEquals(62.5, found("53.333333 %", "16 A", "20 A").value(), 0.001);
        assertEquals(Verdict.NOT_MET, found("53.333333 %", "16 A", "20 A").verdict());
    }

    /** IEC 60364-4-43, 433.1, from memory: the breaker at least the current. */
    @Test
    void elsewhereTheCurrentItselfIsEnough() {
        var job = job("40 %", "32 A", "25 A").with("job.home-set", "un-ece").without("confirmations");
        job.confirming("tables", "pilot-current").confirming("un-ece", "supply-current");
        assertEquals(Verdict.MET, job.found(new SupplyCurrent()).verdict());
    }

    @Test
    void aSupplyThatSaysNoCurrentIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, found("5.0 %", "32 A", "40 A").verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("readings.charge.breaker", "readings.charge.duty"),
                JobText.onTwoAxles().found(new SupplyCurrent()).missing());
    }
}
