package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A lead of 32 A: 53.33 % allows 32 A (by hand from 0.6 A per %, IEC 61851-1, Annex A). */
class PilotCurrentTest {
    private static JobText job(String duty) {
        return TractionText.sound()
                .confirming("tables", "pilot-current")
                .with(
                        "readings.charge",
                        "{ instrument: pilot-meter, date: 2026-09-30, duty: " + duty
                                + ", supply-from: A. Tester, lead-current: 32 A }");
    }

    private static Found margin(String duty) {
        return job(duty).found(new PilotCurrent(), "charge lead");
    }

    @Test
    void aLeadThatCarriesMoreThanIsAllowedIsMet() {
        assertEquals(8, margin("40.0 %").value(), 1e-9);
        assertEquals(Verdict.MET, margin("53.1 %").verdict());
    }

    @Test
    void aLeadThatCarriesLessIsNotMet() {
        assertEquals(Verdict.NOT_MET, margin("53.6 %").verdict());
        assertEquals(Verdict.NOT_MET, margin("90.0 %").verdict());
    }

    @Test
    void aDutyAtTheRatingIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, margin("53.3 %").verdict());
    }

    @Test
    void aDutyThatSaysNoCurrentIsNoEvidence() {
        for (String duty : List.of("2.0 %", "3.5 %", "5.0 %", "6.5 %", "7.5 %", "98.0 %")) {
            assertEquals(Verdict.NO_EVIDENCE, margin(duty).verdict(), duty);
        }
    }

    @Test
    void aDutyAtTheJumpOfTheLawIsNotDecided() {
        var found = margin("85.0 %");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("both sides of 85 %"), found.why());
    }

    @Test
    void aTableNobodyConfirmedMayHoldButNotClear() {
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                job("40.0 %").without("confirmations").found(new PilotCurrent()).verdict());
        assertEquals(
                Verdict.NOT_MET,
                job("60.0 %").without("confirmations").found(new PilotCurrent()).verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("readings.charge.lead-current", "readings.charge.duty"),
                JobText.onTwoAxles().found(new PilotCurrent()).missing());
    }
}
