package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Counted by hand on the circuit of the fixture. */
class PartJoinedTest {
    private final JobText job = TractionText.sound();

    private Found of(String part) {
        return job.found(new PartJoined(), part);
    }

    @Test
    void everyTerminalOfASoundCircuitIsLedOn() {
        job.examined(new PartJoined())
                .rows()
                .forEach(row -> assertEquals(
                        Verdict.MET, row.finding().verdict(), row.finding().subject()));
        assertEquals(0, of("heater").value());
    }

    @Test
    void aPartWithoutOneOfItsCablesIsNamed() {
        job.drop("links", "c-heater-minus");
        assertEquals(1, of("heater").value());
        assertEquals(Verdict.NOT_MET, of("heater").verdict());
        assertTrue(of("heater").why().contains("heater/-"), of("heater").why());
        assertEquals(Verdict.MET, of("inverter").verdict());
    }

    @Test
    void aPartOnAnIslandIsNotMet() {
        job.drop("links", "c-heater-minus").drop("links", "c-heater-plus");
        assertEquals(2, of("heater").value());
        assertEquals(Verdict.NOT_MET, of("heater").verdict());
        assertEquals(Verdict.NOT_MET, of("heater-fuse").verdict());
    }

    @Test
    void aBoxWhosePoleLeadsNowhereIsNamed() {
        job.drop("links", "b1");
        assertEquals(Verdict.NOT_MET, of("rear-box").verdict());
        assertTrue(of("rear-box").why().contains("rear-box/-"), of("rear-box").why());
        assertEquals(Verdict.NOT_MET, of("contactor-minus").verdict());
    }

    @Test
    void theSecondPoleOfASwitchIsATerminalToo() {
        job.alter("parts", "disconnect", "role: disconnect", "role: disconnect, poles: \"2\"");
        assertEquals(2, of("disconnect").value());
    }

    @Test
    void linksNobodyRecordedAreNoEvidence() {
        Found found = job.without("links").found(new PartJoined());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
