package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** 50 mm² of 3 m each way at 300 A: 0.6948 V at 20 °C, 0.8859 V and 265.8 W at 90 °C, worked by hand from IEC 60228 and IEC 60028. */
class VoltageDropTest {
    private static Found inverter(String subject, String temperature) {
        return TractionText.sound()
                .confirming("tables", "conductor-resistance")
                .with("pack.currents", "{ from: settings, drive-continuous: 300 A }")
                .alter("links", "c-inverter", "70 mm²", "50 mm²")
                .alter("links", "c-inverter", "length: 1 m", "length: 3 m")
                .alter("links", "c-inverter", "max-temperature: 150 °C, ", temperature)
                .found(new VoltageDrop(), subject);
    }

    /** Nominal 22 × 4 × 3.65 V = 321.2 V. */
    @Test
    void aCableTakesItsShareOfTheVoltage() {
        assertEquals(0.6948, inverter("c-inverter", "max-temperature: 20 °C, ").value() * 3.212, 5e-5);
        assertEquals(0.8859, inverter("c-inverter", "max-temperature: 90 °C, ").value() * 3.212, 5e-5);
    }

    @Test
    void whatItTakesBecomesHeat() {
        assertEquals(
                265.8, inverter("c-inverter, heat", "max-temperature: 90 °C, ").value(), 0.05);
    }

    @Test
    void withoutALimitOfItsOwnAConductorIsTakenAtNinetyDegreesAndThatIsSaid() {
        Found found = inverter("c-inverter, heat", "");
        assertEquals(265.8, found.value(), 0.05);
        assertEquals(
                List.of("the highest conductor temperature of c-inverter is not recorded"),
                found.finding().reservations());
    }

    /** One conductor of 4 m: 0.272 mΩ × 4 × (1 + 0.00393 × 130) × (180 A)² = 53.26 W. */
    @Test
    void aCableWithOneConductorTakesHalf() {
        assertEquals(
                53.26,
                TractionText.sound().found(new VoltageDrop(), "c-minus, heat").value(),
                0.005);
    }

    @Test
    void nothingIsJudged() {
        assertTrue(TractionText.sound().examined(new VoltageDrop()).rows().stream()
                .allMatch(row -> row.verdict() == Verdict.NO_LIMIT));
    }

    @Test
    void aLengthNobodyMeasuredIsNoEvidence() {
        var found = TractionText.sound()
                .alter("links", "c-plus", "length: 1 m, ", "")
                .found(new VoltageDrop(), "c-plus");
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links[c-plus].length"), found.missing());
    }

    @Test
    void aCableWithoutASizePrintsNothing() {
        var job = TractionText.sound().alter("links", "c-plus", "size: 70 mm², ", "");
        assertTrue(job.examined(new VoltageDrop()).rows().stream()
                .noneMatch(row -> row.finding().subject().startsWith("c-plus")));
    }

    @Test
    void nothingRecordedPrintsNothing() {
        assertEquals(List.of(), JobText.blank().examined(new VoltageDrop()).rows());
    }
}
