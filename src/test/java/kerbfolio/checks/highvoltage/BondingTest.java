package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/** Below 0.1 Ω at 0.2 A or more (UN R100, 5.1.2.2); the quotients by hand. */
class BondingTest {
    private final JobText job = Confirmed.sound();

    private Found heater(String voltage, String current) {
        return job.alter(
                        "readings.bonding",
                        "heater",
                        "current: 10.0 A, voltage: 0.2 V",
                        "current: " + current + ", voltage: " + voltage)
                .found(new Bonding(), "heater");
    }

    /** 18 mV at 0.2 A is 0.09 Ω. */
    @Test
    void aBondBelowATenthOfAnOhmIsMet() {
        var found = heater("18 mV ± 0.1 mV", "0.2 A ± 0.001 A");
        assertEquals(0.09, found.value(), 1e-9);
        assertEquals(Verdict.MET, found.verdict());
    }

    /** 1.9 V at 25 A is 0.076 Ω. */
    @Test
    void aLargeCurrentMeasuresTheSame() {
        var found = heater("1.9 V", "25 A");
        assertEquals(0.076, found.value(), 1e-9);
        assertEquals(Verdict.MET, found.verdict());
    }

    /** 21 mV at 0.2 A is 0.105 Ω. */
    @Test
    void aBondAboveATenthOfAnOhmIsNotMet() {
        var found = heater("21 mV ± 0.1 mV", "0.2 A ± 0.001 A");
        assertEquals(0.105, found.value(), 1e-9);
        assertEquals(Verdict.NOT_MET, found.verdict());
    }

    @Test
    void aBondOfATenthOfAnOhmIsTooCloseToTell() {
        assertEquals(
                Verdict.UNDECIDED, heater("20 mV ± 0.1 mV", "0.2 A ± 0.001 A").verdict());
    }

    @Test
    void aTestCurrentTooLowIsNoEvidence() {
        var found = heater("2 mV", "0.02 A");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertTrue(found.why().contains("test current too low"), found.why());
    }

    @Test
    void noTestCurrentIsNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, heater("2 mV", "0 A").verdict());
    }

    @Test
    void theWorstOfSeveralReadingsCounts() {
        job.add(
                "readings.bonding",
                "{ of: heater, point: foot, instrument: voltmeter, current-instrument: clamp, date: 2026-09-30, current: 10.0 A, voltage: 1.4 V }");
        var found = job.found(new Bonding(), "heater");
        assertEquals(0.14, found.value(), 1e-9);
        assertEquals(Verdict.NOT_MET, found.verdict());
    }

    @Test
    void aPartNobodyMeasuredIsNoEvidence() {
        var found = job.drop("readings.bonding", "heater").found(new Bonding(), "heater");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("readings.bonding[heater]"), found.missing());
    }

    @Test
    void aReadingWithoutAnInstrumentIsNoEvidence() {
        job.alter("readings.bonding", "heater", "instrument: voltmeter, ", "");
        assertEquals(Verdict.NO_EVIDENCE, job.found(new Bonding(), "heater").verdict());
    }

    @Test
    void aPlasticCaseIsNotAskedForAndAnUnknownOneIs() {
        job.alter("parts", "heater", "conductive: yes", "conductive: no");
        assertTrue(job.examined(new Bonding()).rows().stream()
                .noneMatch(row -> row.finding().subject().equals("heater")));
        job.alter("parts", "charger", "conductive: yes, ", "");
        assertEquals(
                List.of("parts[charger].enclosure.conductive"),
                job.found(new Bonding(), "charger").missing());
    }

    @Test
    void theEarthPinIsMeasuredThoughTheInletIsPlastic() {
        job.alter("parts", "inlet", "conductive: yes", "conductive: no");
        assertEquals(Verdict.MET, job.found(new Bonding(), "inlet, earth pin").verdict());
        job.drop("readings.bonding", "inlet");
        assertEquals(
                Verdict.NO_EVIDENCE,
                job.found(new Bonding(), "inlet, earth pin").verdict());
    }

    @Test
    void aJobWithoutPartsAsksForThem() {
        assertEquals(List.of("parts"), JobText.blank().found(new Bonding()).missing());
        assertEquals(Optional.of(Gate.ENERGISE), new Bonding().gate());
    }

    /** The flange of the inlet is not its pin. */
    @Test
    void aReadingBesideTheInletSaysNothingOfItsPin() {
        var job = TractionText.sound().alter("readings.bonding", "inlet", "earth pin", "flange");
        assertEquals(
                Verdict.NO_EVIDENCE,
                job.found(new Bonding(), "inlet, earth pin").verdict());
    }
}
