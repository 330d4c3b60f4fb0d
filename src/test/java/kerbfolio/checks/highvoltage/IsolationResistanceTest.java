package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/**
 * A pack of 400 V whose rails lead 150 kΩ (plus) and 300 kΩ (minus) to the chassis, with a resistor of 200 kΩ. The voltages
 * follow from Kirchhoff's laws, by hand; 150 kΩ over 400 V is 375 Ω/V. Limits: UN R100, 5.1.3.1 and 5.1.3.2.
 */
class IsolationResistanceTest {
    private static final String DIRECT = "front-box, heater";
    private static final String WITH_INVERTER = "front-box, heater, inverter";
    private static final String TENTH =
            "minus-to-chassis: 264.026 V, plus-to-chassis: 132.013 V, with-resistor: 176.600 V, resistor: 200 kΩ, meter-resistance: 10 MΩ";

    private final JobText job = Confirmed.fourHundredVolts();

    private Found voltmeter(String joined, String read) {
        return job.add("readings.isolation", Confirmed.voltmeter(joined, read)).found(new IsolationResistance());
    }

    private Found fourVolts(String read) {
        return voltmeter(WITH_INVERTER, "pack-voltage: 400.0 V, " + read);
    }

    private Found shown(String method, String joined, String read) {
        return job.add("readings.isolation", Confirmed.shown(method, joined, read))
                .found(new IsolationResistance());
    }

    private void assertRefused(String why, Found found) {
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains(why), found.why());
    }

    @Test
    void anIdealMeterFindsTheLowerRail() {
        var found = fourVolts(
                "minus-to-chassis: 266.667 V, plus-to-chassis: 133.333 V, with-resistor: 177.778 V, resistor: 200 kΩ, meter-resistance: 100 GΩ");
        assertEquals(375, found.value(), 0.01);
        assertEquals("iso, plus rail", found.finding().subject());
        assertEquals(Verdict.NOT_MET, found.verdict());
    }

    @Test
    void aMeterOfTenMegohmFindsTheSame() {
        var found = voltmeter(DIRECT, "pack-voltage: 400.0 V, " + TENTH);
        assertEquals(375, found.value(), 0.01);
        assertEquals(Verdict.MET, found.verdict());
    }

    /** The method asks for 10 MΩ (from memory), though the formula holds for any meter: it may hold and not clear. */
    @Test
    void aMeterThatDrawsMoreFindsTheSameAndClearsNothing() {
        var found = voltmeter(
                DIRECT,
                "pack-voltage: 400.0 V, minus-to-chassis: 242.424 V, plus-to-chassis: 121.212 V, with-resistor: 166.667 V, resistor: 200 kΩ, meter-resistance: 1 MΩ");
        assertEquals(375, found.value(), 0.01);
        assertEquals(Verdict.MET_UNCONFIRMED, found.verdict());
        assertTrue(found.finding().reservations().toString().contains("asks for at least 10 MΩ"));
    }

    /** By hand: 200 kΩ x 400 x (1/100 - 1/260) = 492.31 kΩ, 1231 Ω/V. */
    @Test
    void aSoundCircuitIsMetWithTheInverterJoined() {
        var found = fourVolts(
                "minus-to-chassis: 260.0 V, plus-to-chassis: 140.0 V, with-resistor: 100.0 V, resistor: 200.0 kΩ, meter-resistance: 100 GΩ");
        assertEquals(1230.77, found.value(), 0.01);
        assertEquals(Verdict.MET, found.verdict());
    }

    @Test
    void theOtherRailIsTheLowerOneWhereThePlusPoleReadsMore() {
        var found = voltmeter(
                DIRECT,
                "pack-voltage: 400.0 V, minus-to-chassis: 132.013 V, plus-to-chassis: 264.026 V, with-resistor: 176.600 V, resistor: 200 kΩ, meter-resistance: 10 MΩ");
        assertEquals("iso, minus rail", found.finding().subject());
        assertEquals(375, found.value(), 0.01);
    }

    /** Two rails of 200 kΩ: both poles read 200 V, 400/3 V with 200 kΩ beside the meter; 500 Ω/V, by hand. */
    @Test
    void equalRailsAtTheLimitAreTooCloseToTell() {
        var found = fourVolts(
                "minus-to-chassis: 200.0 V, plus-to-chassis: 200.0 V, with-resistor: 133.333 V, resistor: 200.0 kΩ, meter-resistance: 100 GΩ");
        assertEquals("iso, plus rail", found.finding().subject());
        assertEquals(500, found.value(), 0.01);
        assertEquals(Verdict.UNDECIDED, found.verdict());
    }

    @Test
    void anEmptyPackDoesNotStressTheInsulation() {
        assertRefused("U_b >= U_n", voltmeter(WITH_INVERTER, "pack-voltage: 350.0 V, " + TENTH));
    }

    @Test
    void aResistorThatRaisesTheReadingIsRefused() {
        assertRefused("V_1' < V_1", fourVolts(TENTH.replace("176.600", "264.100")));
    }

    @Test
    void polesThatReadMoreThanThePackAreRefused() {
        assertRefused("V_1 + V_2 <= 1.01*U_b", fourVolts(TENTH.replace("132.013", "141.000")));
    }

    /** 260.0/264.026 = 0.985. */
    @Test
    void aResistorThatHardlyChangesTheReadingIsRefused() {
        assertRefused("use a smaller one", fourVolts(TENTH.replace("176.600", "260.000")));
    }

    /** 253.3 + 126.7 = 380 V: a meter of 10 MΩ would draw that only beside 526 kΩ, the resistor says 155 kΩ; by hand. */
    @Test
    void whatTheMeterDrawsCannotBelieTheResistor() {
        var high =
                "minus-to-chassis: 253.333 V, plus-to-chassis: 126.667 V, with-resistor: 170.000 V, resistor: 200 kΩ, meter-resistance: 10 MΩ";
        assertRefused("does not fit", fourVolts(high));
    }

    /** 265.33 + 132.67 = 398 V: beside 10 MΩ that is 50 kΩ, the resistor says 1 MΩ; by hand. */
    @Test
    void norCanItShowLessThanHalfOfIt() {
        var low =
                "minus-to-chassis: 265.330 V, plus-to-chassis: 132.660 V, with-resistor: 61.470 V, resistor: 200 kΩ, meter-resistance: 10 MΩ";
        assertRefused("does not fit", fourVolts(low));
    }

    @Test
    void aMeterOfUnknownResistanceIsNoEvidence() {
        var found = fourVolts(TENTH.replace(", meter-resistance: 10 MΩ", ""));
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("readings.isolation[iso].meter-resistance"), found.missing());
    }

    @Test
    void aPoleNobodyMeasuredIsNoEvidence() {
        var found = fourVolts(TENTH.replace("plus-to-chassis: 132.013 V, ", ""));
        assertEquals(List.of("readings.isolation[iso].plus-to-chassis"), found.missing());
        assertEquals("iso", found.finding().subject());
    }

    @Test
    void aReadingWithNothingJoinedSaysNothing() {
        assertRefused("what was joined is not listed", voltmeter("", "pack-voltage: 400.0 V, " + TENTH));
        assertRefused(
                "what was joined is not listed",
                Confirmed.fourHundredVolts()
                        .add(
                                "readings.isolation",
                                Confirmed.shown("tester", "", "test-voltage: 500 V, pole: both, resistance: 9 MΩ"))
                        .found(new IsolationResistance()));
    }

    /** 0.19 MΩ over 400 V is 475 Ω/V. */
    @Test
    void aTesterIsJudgedByWhatItShows() {
        var found = shown("tester", WITH_INVERTER, "test-voltage: 500 V, pole: both, resistance: 0.190 MΩ ± 0.001 MΩ");
        assertEquals(475, found.value(), 1e-6);
        assertEquals(Verdict.NOT_MET, found.verdict());
        assertEquals("tester, both poles", found.finding().subject());
    }

    @Test
    void aTesterBelowTheWorkingVoltageIsNoEvidence() {
        assertRefused(
                "below the highest working voltage",
                shown("tester", DIRECT, "test-voltage: 250 V, pole: both, resistance: 9 MΩ"));
    }

    @Test
    void aTesterWithoutVoltageOrPoleIsNoEvidence() {
        assertEquals(
                List.of("readings.isolation[tester].test-voltage"),
                shown("tester", DIRECT, "pole: both, resistance: 9 MΩ").missing());
        job.drop("readings.isolation", "tester");
        assertEquals(
                List.of("readings.isolation[tester].pole"),
                shown("tester", DIRECT, "test-voltage: 500 V, resistance: 9 MΩ").missing());
    }

    /** More than 1 MΩ over 400 V is more than 2500 Ω/V; more than 0.1 MΩ is more than 250 Ω/V, and may be anything. */
    @Test
    void theEndOfTheScaleCanShowThatTheLimitIsReachedAndNotThatItIsMissed() {
        var found = shown("tester", WITH_INVERTER, "test-voltage: 500 V, pole: both, resistance: \"> 1 MΩ\"");
        assertEquals(Verdict.MET, found.verdict());
        job.drop("readings.isolation", "tester");
        assertRefused(
                "reads > 0.1 MΩ, which proves nothing against 500 Ω/V",
                shown("tester", WITH_INVERTER, "test-voltage: 500 V, pole: both, resistance: \"> 0.1 MΩ\""));
    }

    @Test
    void oneRailAloneClearsNothing() {
        var plus = shown("tester", DIRECT, "test-voltage: 500 V, pole: plus, resistance: 9 MΩ");
        assertEquals(Verdict.MET_UNCONFIRMED, plus.verdict());
        job.add(
                "readings.isolation",
                Confirmed.shown("tester", DIRECT, "test-voltage: 500 V, pole: minus, resistance: 9 MΩ")
                        .replace("id: tester", "id: other"));
        assertEquals(
                Verdict.MET,
                job.found(new IsolationResistance(), "tester, plus pole").verdict());
    }

    @Test
    void aDisplayMayHoldAndClearsOnlyBesideAnInstrument() {
        var subject = "monitor, as the monitor shows";
        assertEquals(
                Verdict.NOT_MET,
                shown("monitor", WITH_INVERTER, "resistance: 0.1 MΩ").verdict());
        job.drop("readings.isolation", "monitor");
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                shown("monitor", WITH_INVERTER, "resistance: 5 MΩ").verdict());
        job.add(
                "readings.isolation",
                Confirmed.shown("tester", DIRECT, "test-voltage: 500 V, pole: both, resistance: 9 MΩ"));
        assertEquals(
                Verdict.MET_UNCONFIRMED,
                job.found(new IsolationResistance(), subject).verdict());
        job.alter("readings.isolation", "tester", "heater", "heater, inverter");
        assertEquals(Verdict.MET, job.found(new IsolationResistance(), subject).verdict());
    }

    @Test
    void aReadingWithoutAnInstrumentIsNoEvidence() {
        job.add("readings.isolation", Confirmed.voltmeter(DIRECT, "pack-voltage: 400.0 V, " + TENTH))
                .alter("readings.isolation", "iso", "instrument: voltmeter, ", "");
        assertEquals(Verdict.NO_EVIDENCE, job.found(new IsolationResistance()).verdict());
    }

    @Test
    void aCircuitNobodyMeasuredIsNoEvidence() {
        assertEquals(
                List.of("readings.isolation"),
                job.found(new IsolationResistance()).missing());
        assertEquals(
                List.of("readings.isolation"),
                JobText.blank().found(new IsolationResistance()).missing());
    }

    /** 375 Ω/V: the federal texts differ for direct current, so the higher figure of 500 Ω/V is taken (from memory). */
    @Test
    void theFederalSetAsksForFiveHundred() {
        job.homeSet("us-federal");
        assertEquals(
                Verdict.NOT_MET,
                voltmeter(DIRECT, "pack-voltage: 400.0 V, " + TENTH).verdict());
    }

    @Test
    void nobodyWaivesIsolation() {
        assertFalse(new IsolationResistance().isWaivable());
        assertEquals(Optional.of(Gate.ENERGISE), new IsolationResistance().gate());
    }
}
