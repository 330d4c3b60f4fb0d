package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Short circuits drawn by hand into the circuit of the fixture. */
class PolesApartTest {
    private final JobText job = TractionText.sound();

    private Found of(String part) {
        return job.found(new PolesApart(), part);
    }

    @Test
    void noConductorJoinsThePolesOfASoundCircuit() {
        job.examined(new PolesApart())
                .rows()
                .forEach(row -> assertEquals(
                        Verdict.MET, row.finding().verdict(), row.finding().subject()));
    }

    @Test
    void aCableOnTheWrongPoleIsNamedWithItsWay() {
        job.alter("links", "c-heater-minus", "junction-box/-", "heater-fuse/1");
        assertEquals(1, of("heater").value());
        assertEquals(Verdict.NOT_MET, of("heater").verdict());
        assertEquals(
                "its poles are joined through c-heater-plus, heater-fuse, c-heater-minus",
                of("heater").why());
        assertEquals(Verdict.MET, of("inverter").verdict());
    }

    @Test
    void allThatHangsOnAShortedBusIsShorted() {
        job.add("links", "{ id: bridge, kind: busbar, from: junction-box/+, to: junction-box/- }");
        for (String part : List.of("junction-box", "inverter", "heater", "charger", "converter")) {
            assertEquals(Verdict.NOT_MET, of(part).verdict(), part);
        }
        assertEquals("its poles are joined through bridge", of("junction-box").why());
        assertEquals(Verdict.MET, of("front-box").verdict(), "its other pole ends on the other box");
    }

    @Test
    void linksNobodyRecordedAreNoEvidence() {
        Found found = job.without("links").found(new PolesApart());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("links"), found.missing());
    }
}
