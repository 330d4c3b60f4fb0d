package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** By hand: at 120 km/h on 300 mm and 8 to 1 the motor turns at 8488 rpm and makes 254.6 V, 60.6 % of 420 V; at 50 km/h 25.3 %. */
class BackVoltageTest {
    private final JobText job = TractionText.sound();

    private Found top(String from, String to) {
        return job.alter("parts", "drive-unit", from, to).found(new BackVoltage(), "drive-unit at top speed, inverter");
    }

    @Test
    void aMotorThatMakesLessThanTheInverterBearsIsMet() {
        assertEquals(
                60.6,
                job.found(new BackVoltage(), "drive-unit at top speed, inverter")
                        .value(),
                0.05);
        assertEquals(
                25.3, job.found(new BackVoltage(), "drive-unit towed, inverter").value(), 0.05);
        assertEquals(
                Verdict.MET,
                job.found(new BackVoltage(), "drive-unit towed, inverter").verdict());
    }

    @Test
    void aMotorThatMakesMoreIsNotMet() {
        assertEquals(Verdict.NOT_MET, top("150 V", "250 V").verdict());
    }

    @Test
    void aMotorInDoubtIsUndecided() {
        assertEquals(Verdict.UNDECIDED, top("150 V", "247 V ± 10 V").verdict());
    }

    @Test
    void aMotorWithoutMagnetsMakesNothing() {
        assertEquals(
                List.of(),
                job.alter("parts", "drive-unit", "kind: magnet", "kind: induction")
                        .examined(new BackVoltage())
                        .rows());
    }

    @Test
    void aMotorNobodyKnowsTheKindOfIsNoEvidence() {
        var found = job.alter("parts", "drive-unit", "kind: magnet, ", "").found(new BackVoltage());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts[drive-unit].motor.kind"), found.missing());
    }

    @Test
    void figuresOfNothingAreNoEvidence() {
        assertEquals(Verdict.NO_EVIDENCE, top("300 mm", "0 mm").verdict());
        assertEquals(Verdict.NO_EVIDENCE, top("5000 rpm", "0 rpm").verdict());
    }

    @Test
    void aSpeedNobodyAllowedIsNoEvidence() {
        job.alter("parts", "drive-unit", ", tow-speed: 50 km/h", "");
        assertEquals(
                List.of("parts[drive-unit].motor.tow-speed"),
                job.found(new BackVoltage(), "drive-unit towed, inverter").missing());
    }

    @Test
    void nothingRecordedIsNoEvidence() {
        var found = JobText.blank().found(new BackVoltage());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts"), found.missing());
    }
}
