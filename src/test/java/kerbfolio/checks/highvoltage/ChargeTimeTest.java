package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: 40 kWh from 20 to 80 % at 6.6 kW taken and 92 % given are 40·0.6/(6.6·0.92) = 3.953 h. */
class ChargeTimeTest {
    /** 100 cell groups of 4 V nominal and 100 Ah: 40 kWh. */
    private static JobText job(String supply, String charger) {
        return TractionText.sound()
                .with("pack.modules", "\"25\"")
                .alter("pack.boxes", "rear-box", "14", "17")
                .with("pack.cell", "{ from: maker, nominal-voltage: 4 V, capacity: 50 Ah }")
                .alter(
                        "parts",
                        "charger",
                        "input-voltage: 230 V, input-current: 32 A, phases: \"1\", power: 6.6 kW",
                        charger)
                .with("readings.charge", "{ instrument: pilot-meter, date: 2026-09-30, " + supply + " }");
    }

    private static double hours(String supply, String charger) {
        return job(supply, charger).found(new ChargeTime(), "charger").value();
    }

    @Test
    void theSupplyDecidesWhereItGivesLess() {
        assertEquals(
                3.953,
                hours(
                        "duty: 96.5 %, supply-voltage: 240 V, from-charge: 20 %, to-charge: 80 %",
                        "input-current: 27.5 A, phases: \"1\", power: 11 kW"),
                0.0005);
    }

    /** By hand: √3 · 400 V · 16 A = 11.085 kW; 24 kWh/(11.085 kW · 0.92) = 2.353 h. */
    @Test
    void threePhasesCountFromConductorToConductor() {
        assertEquals(
                2.353,
                hours(
                        "duty: 96.5 %, supply-voltage: 400 V, from-charge: 20 %, to-charge: 80 %",
                        "input-current: 16 A, phases: \"3\", power: 22 kW"),
                0.0005);
    }

    /** By hand: 24 kWh at 3.3 kW are 7.273 h. */
    @Test
    void theChargerDecidesWhereItGivesLess() {
        assertEquals(
                7.273,
                hours(
                        "duty: 96.5 %, supply-voltage: 240 V, from-charge: 20 %, to-charge: 80 %",
                        "input-current: 32 A, phases: \"1\", power: 3.3 kW"),
                0.0005);
    }

    /** By hand: 16.667 % allow 10 A, at 230 V 2.3 kW; 24/(2.3 · 0.92) = 11.342 h. */
    @Test
    void thePilotDecidesWhereItAllowsLess() {
        assertEquals(
                11.342,
                hours(
                        "duty: 16.667 %, supply-voltage: 230 V, from-charge: 20 %, to-charge: 80 %",
                        "input-current: 32 A, phases: \"1\", power: 6.6 kW"),
                0.0005);
    }

    @Test
    void aChargeThatEndsWhereItBeginsIsNone() {
        var found = job(
                        "duty: 40.0 %, supply-voltage: 240 V, from-charge: 80 %, to-charge: 80 %",
                        "input-current: 32 A, phases: \"1\", power: 6.6 kW")
                .found(new ChargeTime());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
    }

    @Test
    void theTimeIsPrintedAndNotJudged() {
        assertEquals(
                Verdict.NO_LIMIT,
                TractionText.sound().found(new ChargeTime(), "charger").verdict());
    }

    @Test
    void whatIsNotRecordedIsNoEvidence() {
        assertEquals(
                List.of("parts"), JobText.onTwoAxles().found(new ChargeTime()).missing());
        assertEquals(
                List.of("readings.charge.duty"),
                TractionText.sound()
                        .with("readings.charge", "{ supply-voltage: 230 V, from-charge: 20 %, to-charge: 80 % }")
                        .found(new ChargeTime())
                        .missing());
    }
}
