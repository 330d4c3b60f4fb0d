package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** What is asked for is a rule of this program, no outside source; each thing is there or it is not. */
class MakeDeadRecordTest {
    private final JobText job = TractionText.sound()
            .alter(
                    "parts",
                    "inverter",
                    "role: inverter",
                    "role: inverter, test-point: { name: lugs + and -, cover: \"lid, 6 screws\", equipment: gloves }");

    private Found of(String subject) {
        return job.found(new MakeDeadRecord(), subject);
    }

    private void lacks(String subject, String path) {
        assertEquals(Verdict.NO_EVIDENCE, of(subject).verdict());
        assertEquals(List.of(path), of(subject).missing());
    }

    @Test
    void aRecordWithEverythingIsMet() {
        job.examined(new MakeDeadRecord())
                .rows()
                .forEach(row -> assertEquals(
                        Verdict.MET, row.finding().verdict(), row.finding().subject()));
        assertEquals(1, of("cover of the test point at inverter").value());
    }

    @Test
    void nobodyWaivesIt() {
        assertFalse(new MakeDeadRecord().isWaivable());
    }

    @Test
    void aTestPointIsAskedForWithItsCoverAndEquipment() {
        job.alter("parts", "inverter", ", cover: \"lid, 6 screws\", equipment: gloves", "");
        lacks("cover of the test point at inverter", "parts[inverter].test-point.cover");
        lacks("protective equipment of the test point at inverter", "parts[inverter].test-point.equipment");
        assertEquals(
                List.of("parts[inverter].test-point"),
                TractionText.sound().found(new MakeDeadRecord(), "a test point").missing());
    }

    @Test
    void aDisconnectIsAskedForWithItsPlace() {
        job.alter("parts", "disconnect", "place: luggage, ", "");
        assertEquals(Verdict.MET, of("where disconnect sits").verdict(), "a position is a place");
        job.alter("parts", "disconnect", "position: { x: 1900 mm }, ", "");
        lacks("where disconnect sits", "parts[disconnect].enclosure.place");
        job.drop("parts", "disconnect");
        lacks("a service disconnect", "parts");
    }

    @Test
    void everyCapacitanceAndABleedOnEachBusAreAskedFor() {
        job.alter("parts", "heater", "capacitance: 2 µF, y-capacitance: 0.01 µF, bleed: 200 kΩ", "feeds-back: no");
        lacks("capacitance of heater", "parts[heater].electrical.capacitance");
        String bus = "bleed resistance on junction-box + inverter + charger + converter + heater";
        assertEquals(Verdict.MET, of(bus).verdict(), "another part empties the bus");
    }

    @Test
    void theKindOfTheMotorIsAskedForBecauseAMagnetFillsTheBus() {
        job.alter("parts", "drive-unit", "kind: magnet, ", "");
        lacks("kind of the motor in drive-unit", "parts[drive-unit].motor.kind");
        job.drop("parts", "drive-unit").drop("links", "c-motor");
        lacks("a motor and its kind", "parts");
    }

    @Test
    void aJobWithoutTractionDataLacksAll() {
        var rows = JobText.blank().examined(new MakeDeadRecord()).rows();
        assertEquals(3, rows.size());
        rows.forEach(row -> assertEquals(Verdict.NO_EVIDENCE, row.finding().verdict()));
    }

    /** The cells of a box are behind no disconnect, so what is measured at the box is live on a dead car. */
    @Test
    void aTestPointAtABoxOfCellsProvesNothing() {
        var job = TractionText.sound()
                .alter(
                        "parts",
                        "front-box",
                        "makers-wait: 5 min }",
                        "makers-wait: 5 min }, test-point: { name: bars, cover: lid, equipment: gloves }");
        assertEquals(
                Verdict.NOT_MET,
                job.found(new MakeDeadRecord(), "that the test point at front-box can be dead")
                        .verdict());
        assertEquals(
                Verdict.NO_EVIDENCE,
                job.found(new MakeDeadRecord(), "a test point").verdict());
    }
}
