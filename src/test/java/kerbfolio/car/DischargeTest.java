package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** Which buses a mechanic waits for once the disconnects are out; found by hand on the drawing of the sound car. */
class DischargeTest {
    private static List<String> buses(JobText job) {
        return Discharge.buses(job.car().circuit()).stream()
                .map(Object::toString)
                .toList();
    }

    @Test
    void aBusThatIsTheSameWithContactorsOpenAndWeldedCountsOnce() {
        assertEquals(List.of("junction-box + inverter + charger + converter + heater"), buses(TractionText.sound()));
    }

    /** A heater ahead of a contactor is a bus of its own while that is open, and hangs on the others once it is welded. */
    @Test
    void aContactorBetweenTwoPartsMakesTwoBusesOrOne() {
        var job = TractionText.sound()
                .drop("links", "c-heater-plus")
                .add("links", "{ id: c-heater-plus, kind: high-voltage, from: front-fuse/2, to: heater/+ }");
        assertEquals(
                List.of(
                        "junction-box + inverter + charger + converter",
                        "heater",
                        "junction-box + inverter + charger + converter + heater"),
                buses(job));
    }
}
