package kerbfolio.checks.weight;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** A car of 1600 kg weighed twice on axle scales of ± 1 kg; at most 1 % of its mass may be doubtful (our rule). */
class LedgerDoubtTest {
    private static Found doubt(String error) {
        return JobText.onTwoAxles()
                .add("parts", "{ id: box, mass: 300 kg ± " + error + ", mass-from: maker }")
                .add("removed", "{ id: engine, mass: 100 kg ± 1 kg, mass-from: maker }")
                .found(new LedgerDoubt());
    }

    /** By hand: six figures of ± 1 kg make U = 2·√6/√3 = 2.828 kg, 0.1768 % of 1600 kg. */
    @Test
    void aLedgerKnownWellIsMet() {
        assertEquals(0.1768, doubt("1 kg").value(), 0.00005);
        assertEquals("%", doubt("1 kg").unit());
        assertEquals(Verdict.MET, doubt("1 kg").verdict());
    }

    /** By hand: 16 kg of 1600 kg is U for a part of ± a, where 4·(a² + 5)/3 = 16²; a = 13.67 kg. */
    @Test
    void aLedgerKnownBadlyIsNotMetHoweverWellItAgrees() {
        assertEquals(Verdict.MET, doubt("13.6 kg").verdict());
        assertEquals(Verdict.NOT_MET, doubt("13.7 kg").verdict());
        assertEquals(
                Verdict.MET,
                JobText.onTwoAxles()
                        .add("parts", "{ id: box, mass: 300 kg ± 13.7 kg, mass-from: maker }")
                        .add("removed", "{ id: engine, mass: 100 kg ± 1 kg, mass-from: maker }")
                        .found(new LedgerClosure(), "whole car")
                        .verdict());
    }

    @Test
    void aDoubtAtItsLimitIsTooCloseToTell() {
        assertEquals(Verdict.UNDECIDED, doubt("13.67 kg").verdict());
    }

    @Test
    void aLedgerNobodyWroteIsNoEvidence() {
        var found = JobText.onTwoAxles().found(new LedgerDoubt());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("parts", "removed"), found.missing());
    }

    /** What is not closed is not doubted: a published mass neither agrees with the ledger nor holds a gate by its doubt. */
    @Test
    void whereThereIsNoClosureThereIsNoDoubtOfIt() {
        var found = JobText.onTwoAxles()
                .without("weighings.as-received.instrument")
                .with("weighings.as-received.stated-by", "handbook")
                .add("parts", "{ id: box, mass: 300 kg ± 50 kg, mass-from: maker }")
                .add("removed", "{ id: engine, mass: 100 kg ± 1 kg, mass-from: maker }")
                .found(new LedgerDoubt());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("weighings.as-received"), found.missing());
    }

    @Test
    void aMassNobodyStandsForDoesNotClear() {
        var found = JobText.onTwoAxles()
                .add("parts", "{ id: box, mass: 300 kg ± 1 kg }")
                .add("removed", "{ id: engine, mass: 100 kg ± 1 kg, mass-from: maker }")
                .found(new LedgerDoubt());
        assertEquals(Verdict.MET_UNCONFIRMED, found.verdict());
    }
}
