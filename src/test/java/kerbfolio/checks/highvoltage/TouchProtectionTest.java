package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/**
 * No wire inside, no finger elsewhere (UN R100, 5.1.1: IPXXD in cabin and luggage space, IPXXB elsewhere); the letters and
 * numerals of IEC 60529.
 */
class TouchProtectionTest {
    private final JobText job = Confirmed.sound();

    private Found found(String subject) {
        return job.found(new TouchProtection(), subject);
    }

    private Found inverter(String protection) {
        return job.alter("parts", "inverter", "protection: IP67", protection)
                .found(new TouchProtection(), "inverter, closed");
    }

    private Found rearBox(String protection) {
        return job.alter("parts", "rear-box", "protection: IP67", protection)
                .found(new TouchProtection(), "rear-box, closed");
    }

    @Test
    void aFingerKeptOutIsEnoughUnderTheBonnet() {
        assertEquals(2, inverter("protection: IPXXB").value());
        assertEquals(Verdict.MET, found("inverter, closed").verdict());
    }

    @Test
    void aHandKeptOutIsNotEnough() {
        assertEquals(Verdict.NOT_MET, inverter("protection: IP14").verdict());
    }

    @Test
    void aFingerKeptOutIsNotEnoughWhereLuggageIs() {
        assertEquals(Verdict.NOT_MET, rearBox("protection: IPXXB").verdict());
    }

    @Test
    void theSecondNumeralIsWaterAndAFourthOfTheFirstIsAWire() {
        assertEquals(Verdict.MET, rearBox("protection: IP44").verdict());
        job.alter("parts", "heater", "protection: IP67", "protection: IPX7");
        assertEquals(Verdict.NO_EVIDENCE, found("heater, closed").verdict());
    }

    @Test
    void aPlaceNobodyWroteDownIsNoEvidence() {
        job.alter("parts", "inverter", "place: engine-bay, ", "");
        assertEquals(
                List.of("parts[inverter].enclosure.place"),
                found("inverter, closed").missing());
    }

    @Test
    void aCaseNobodyLookedAtIsNoEvidence() {
        assertEquals(
                List.of("parts[inverter].enclosure.protection"),
                inverter("hidden: no").missing());
    }

    @Test
    void aCaseNobodyStatesClearsNothing() {
        job.alter("parts", "inverter", "conductive: yes, from: maker", "conductive: yes");
        assertEquals(Verdict.MET_UNCONFIRMED, found("inverter, closed").verdict());
    }

    @Test
    void aCaseOpenedByHandIsNotMetUnlessLivePartsStayGuarded() {
        assertTrue(job.examined(new TouchProtection()).rows().stream()
                .noneMatch(row -> row.finding().subject().equals("inverter, opened")));
        job.alter("parts", "inverter", "opens-with: tool", "opens-with: hand, open-protection: IP00");
        assertEquals(Verdict.NOT_MET, found("inverter, opened").verdict());
        job.alter("parts", "inverter", "open-protection: IP00", "open-protection: IPXXB");
        assertEquals(Verdict.MET, found("inverter, opened").verdict());
        job.alter("parts", "inverter", "open-protection: IPXXB, ", "");
        assertEquals(
                List.of("parts[inverter].enclosure.open-protection"),
                found("inverter, opened").missing());
    }

    @Test
    void whatOpensACaseIsAskedFor() {
        job.alter("parts", "inverter", "opens-with: tool, ", "");
        assertEquals(
                List.of("parts[inverter].enclosure.opens-with"),
                found("inverter, opened").missing());
    }

    private Found plug(String open, String locked, String more) {
        return job.alter("parts", "inverter", "open: IPXXB, locked: yes,", "open: " + open + ", " + locked + more)
                .found(new TouchProtection(), "inverter-plug");
    }

    @Test
    void aConnectorThatStaysProtectedIsMet() {
        assertEquals(Verdict.MET, plug("IPXXB", "locked: no,", "").verdict());
    }

    @Test
    void aLockByItselfHoldsNothingAndClearsNothing() {
        assertEquals(Verdict.MET_UNCONFIRMED, plug("IP00", "locked: yes,", "").verdict());
    }

    @Test
    void aConnectorDeadWithinASecondIsMet() {
        assertEquals(
                Verdict.MET, plug("IP00", "locked: no,", " dead-within: 1 s,").verdict());
    }

    @Test
    void aConnectorWithNoneOfTheThreeIsNotMet() {
        var found = plug("IP00", "locked: no,", " dead-within: 1.5 s,");
        assertEquals(Verdict.NOT_MET, found.verdict());
        assertTrue(found.why().contains("nothing guards"), found.why());
    }

    @Test
    void whatIsMissingOfAConnectorIsAskedFor() {
        assertEquals(
                List.of("parts[inverter].connectors[inverter-plug].dead-within"),
                plug("IP00", "locked: no,", "").missing());
        job.alter("parts", "heater", "mated: IPXXD, ", "");
        assertEquals(
                List.of("parts[heater].connectors[heater-plug].mated"),
                found("heater-plug, joined").missing());
    }

    @Test
    void aConnectorThatIsOpenWhileJoinedIsNotMet() {
        job.alter("parts", "rear-box", "mated: IPXXD", "mated: IPXXB");
        assertEquals(Verdict.NOT_MET, found("rear-box-plug, joined").verdict());
    }

    @Test
    void whatIsUnconfirmedOfTheJoinedConnectorStaysWithIt() {
        job.without("confirmations").confirming("un-ece", "touch-opened");
        assertEquals(Verdict.MET_UNCONFIRMED, found("inverter-plug").verdict());
    }

    @Test
    void aGuardByALimitNobodyConfirmedClearsNothing() {
        job.without("confirmations").confirming("un-ece", "touch-opened, touch-elsewhere");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                plug("IP00", "locked: no,", " dead-within: 1 s,").verdict());
        assertEquals(Verdict.MET, found("heater-plug").verdict());
    }

    /** The disconnect sits in the luggage space and shows IPXXB once it is out, which is enough there (from memory). */
    @Test
    void aServiceDisconnectNeedsOnlyKeepOutFingersOnceItIsOut() {
        job.alter("parts", "disconnect", "locked: yes", "locked: no");
        assertEquals(Verdict.MET, found("disconnect-plug").verdict());
    }

    @Test
    void whatSitsInABoxIsNotTouched() {
        assertTrue(job.examined(new TouchProtection()).rows().stream()
                .noneMatch(row -> row.finding().subject().contains("fuse")));
    }

    @Test
    void aJobWithoutPartsAsksForThem() {
        assertEquals(
                List.of("parts"), JobText.blank().found(new TouchProtection()).missing());
        assertFalse(new TouchProtection().isWaivable());
    }
}
