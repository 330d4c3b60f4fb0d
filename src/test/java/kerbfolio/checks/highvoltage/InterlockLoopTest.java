package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

/** That a loop passes what parts by hand is common practice, no source; the counts by hand. */
class InterlockLoopTest {
    private final JobText job = Confirmed.sound();

    private Found found(String subject) {
        return job.found(new InterlockLoop(), subject);
    }

    @Test
    void aConnectorTheLoopPassesIsMet() {
        assertEquals(Verdict.MET, found("heater-plug").verdict());
        assertEquals("loop", found("heater-plug").why());
        assertEquals(Verdict.MET, found("disconnect-plug").verdict());
    }

    @Test
    void aConnectorTheLoopLeavesOutIsNotMet() {
        job.alter("links", "loop", ", heater-plug", "");
        assertEquals(0, found("heater-plug").value());
        assertEquals(Verdict.NOT_MET, found("heater-plug").verdict());
        assertEquals(Verdict.MET, found("charger-plug").verdict());
    }

    @Test
    void twoLoopsThroughOneConnectorAreCounted() {
        job.add("links", "{ id: second, kind: interlock, through: [ heater-plug ] }");
        assertEquals(2, found("heater-plug").value());
    }

    @Test
    void aConnectorThatTakesAToolIsNotAskedFor() {
        job.alter("links", "loop", ", heater-plug", "")
                .alter("parts", "heater", "opens-with: hand", "opens-with: tool");
        assertTrue(job.examined(new InterlockLoop()).rows().stream()
                .noneMatch(row -> row.finding().subject().equals("heater-plug")));
    }

    @Test
    void whatItTakesToPartItIsAskedForWhereTheLoopLeavesItOut() {
        job.alter("links", "loop", ", heater-plug", "").alter("parts", "heater", "opens-with: hand, ", "");
        assertEquals(
                List.of("parts[heater].connectors[heater-plug].opens-with"),
                found("heater-plug").missing());
    }

    @Test
    void aDisconnectWithoutConnectorsIsItselfInTheLoop() {
        job.drop("parts", "disconnect")
                .add("parts", "{ id: disconnect, role: disconnect }")
                .alter("links", "loop", "disconnect-plug", "disconnect");
        assertEquals(Verdict.MET, found("disconnect").verdict());
        job.alter("links", "loop", "disconnect, ", "");
        assertEquals(Verdict.NOT_MET, found("disconnect").verdict());
    }

    @Test
    void aLoopNobodyRecordedIsNoEvidence() {
        job.drop("links", "loop");
        assertEquals(Verdict.NO_EVIDENCE, found("interlock loop").verdict());
        assertEquals(Verdict.NO_EVIDENCE, found("heater-plug").verdict());
        assertEquals(
                List.of("links[interlock]"),
                JobText.blank().found(new InterlockLoop()).missing());
        assertEquals(Optional.of(Gate.ENERGISE), new InterlockLoop().gate());
    }
}
