package kerbfolio.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** The order is that of EN 50110-1 and NFPA 70E as taught: disconnect, secure, wait, prove with a proved tester (from memory). */
class MakeDeadTest {
    private final JobText job = TractionText.sound()
            .alter(
                    "parts",
                    "inverter",
                    "role: inverter",
                    "role: inverter, test-point: { name: lugs + and -, cover: \"small lid, 4 screws\", protection: IPXXB, equipment: class 0 gloves, series-resistance: 10 kΩ }");

    private static MakeDead of(JobText job) {
        return MakeDead.of(job.car(), job.limits());
    }

    private static List<String> whats(JobText job) {
        return of(job).steps().stream().map(Step::what).toList();
    }

    private static Step step(JobText job, String begins) {
        return of(job).steps().stream()
                .filter(step -> step.what().startsWith(begins))
                .findFirst()
                .orElseThrow();
    }

    /** The makers of inverter and boxes state 5 min; three decays of 535 µF by about 31 kΩ are 1.5 min. */
    @Test
    void stepsFollowTheOrderInWhichPeopleLive() {
        assertEquals(
                List.of(
                        "Pull out the charge lead.",
                        "Switch off. Take the key out and keep it on you.",
                        "Take the minus clamp off the 12 V battery and insulate it.",
                        "Hold the wheels.",
                        "Put on gloves and face shield.",
                        "Take out service disconnect (luggage, 1900 mm behind front axle), keep it on you, tag its place.",
                        "Wait 5 minutes.",
                        "Prove the tester on a source of more than 60 V of direct current.",
                        "Open the test point at inverter (engine bay, 100 mm behind front axle) and measure.",
                        "Measure at the terminals of charger (engine bay, 300 mm behind front axle).",
                        "Measure at the terminals of heater (engine bay, 200 mm ahead of front axle).",
                        "Prove the tester again, on the same source.",
                        "Lock and tag.",
                        "Sign."),
                whats(job));
    }

    @Test
    void theHeadingSaysWhatItIsDerivedFrom() {
        assertEquals("Derived from 20 recorded links; walk-round: not recorded", of(job).heading());
        assertTrue(of(job).isDerived());
    }

    @Test
    void withoutACircuitItIsABlankFormWithTheSameSteps() {
        MakeDead blank = of(JobText.blank());
        assertFalse(blank.isDerived());
        assertTrue(blank.heading().startsWith("Not derived: "), blank.heading());
        assertEquals(List.of(), blank.live());
        assertEquals(12, blank.steps().size());
        assertTrue(step(JobText.blank(), "Take out the service disconnect")
                .how()
                .get(0)
                .contains("not recorded"));
        assertTrue(step(JobText.blank(), "Open the cover of the test point")
                .how()
                .get(0)
                .contains("not recorded"));
    }

    @Test
    void wheelsAreHeldForAMagnetMotorAndForOneOfUnknownKind() {
        assertTrue(whats(job).contains("Hold the wheels."));
        job.alter("parts", "drive-unit", "kind: magnet, ", "");
        assertTrue(step(job, "Hold the wheels.").how().get(0).endsWith("taken for one with magnets"));
        job.alter("parts", "drive-unit", "motor: { ", "motor: { kind: induction, ");
        assertFalse(whats(job).contains("Hold the wheels."));
        job.drop("parts", "drive-unit").drop("links", "c-motor");
        assertTrue(whats(job).contains("Hold the wheels."), "a car without a motor forgot to record it");
    }

    @Test
    void takingTheDisconnectOutNamesTheVoltageOfItsSocket() {
        Step out = step(job, "Take out service disconnect");
        assertTrue(out.isLive());
        // 88 groups of 4.2 V are 369.6 V.
        assertTrue(out.caution().contains("between its terminals: 370\u00a0V"), out.caution());
        assertEquals(List.of("disconnect-plug opens by hand, after its lock is lifted"), out.how());
    }

    @Test
    void aStepShowsWhatThereArePicturesOf() {
        job.add("photos", "{ file: plug.jpg, caption: where it sits, subject: disconnect }");
        assertEquals(
                List.of("plug.jpg"),
                step(job, "Take out service disconnect").photos().stream()
                        .map(photo -> photo.file())
                        .toList());
        assertEquals(List.of(), step(job, "Pull out").photos());
    }

    @Test
    void openingTheTestPointIsTheLiveStep() {
        Step open = step(job, "Open the test point");
        assertTrue(open.isLive());
        assertTrue(open.caution().startsWith("This is the live step"), open.caution());
        assertEquals("protective equipment: class 0 gloves", open.with());
        assertEquals(
                List.of(
                        "Cover: small lid, 4 screws.",
                        "Under it: IPXXB.",
                        "Probes on: lugs + and -.",
                        "Each socket holds 10 kΩ in series: a meter of low resistance reads too little."),
                open.how());
        assertEquals(
                List.of("+ to \u2212", "+ to chassis", "\u2212 to chassis"),
                open.blanks().stream().map(Step.Blank::label).toList());
        assertEquals(
                List.of("at most 60 V"),
                open.blanks().stream().map(Step.Blank::bound).distinct().toList());
    }

    @Test
    void anInverterIsMeasuredWhereverTheTestPointIs() {
        JobText elsewhere = TractionText.sound()
                .alter(
                        "parts",
                        "junction-box",
                        "role: junction-box",
                        "role: junction-box, test-point: { name: two sockets }");
        assertTrue(step(elsewhere, "Open the test point at junction box").with().contains("not recorded"));
        Step inverter = step(elsewhere, "Measure at the terminals of inverter");
        assertTrue(inverter.isLive());
        assertEquals(3, inverter.blanks().size());
    }

    @Test
    void handsGoToNothingElse() {
        assertEquals(
                List.of(
                        "the charge lead",
                        "the key",
                        "the minus clamp of the 12 V battery",
                        "chocks and parking brake",
                        "service disconnect",
                        "the cover of the test point at inverter",
                        "the terminals of charger, heater, once you have consulted how to reach them"),
                of(job).touched());
    }

    @Test
    void aSetThatGivesNoVoltageLeavesThatToTheReader() {
        // 60 V: UN R100, definition of high voltage.
        assertTrue(of(job).low().startsWith("60 V: "), of(job).low());
        assertTrue(of(job).low().endsWith("(unconfirmed)"), of(job).low());
    }
}
