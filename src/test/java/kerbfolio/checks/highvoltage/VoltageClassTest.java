package kerbfolio.checks.highvoltage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.check.Verdict;
import org.junit.jupiter.api.Test;

/** Class B is above 60 V and up to 1500 V of direct current (UN R100, section 2); cells counted by hand. */
class VoltageClassTest {
    private static Found found(String cells, String maxVoltage) {
        return of(cells, maxVoltage).found(new VoltageClass());
    }

    private static JobText of(String cells, String maxVoltage) {
        return Confirmed.sound()
                .with("pack.modules", "\"" + cells + "\"")
                .with("pack.module", "{ from: maker, cell-groups: \"1\" }")
                .with("pack.cell", "{ from: maker, nominal-voltage: 3.6 V, max-voltage: " + maxVoltage + " }");
    }

    private static String subject(Found found) {
        return found.finding().subject();
    }

    /** 14 x 4.20 V = 58.8 V; 16 x 3.65 V = 58.4 V; 15 x 4.0 V = 60.0 V, which is not above 60 V. */
    @Test
    void aPackOfAtMostSixtyVoltsWhenFullIsLow() {
        assertEquals("pack, class A, at most 60 V", subject(found("14", "4.20 V")));
        assertEquals("pack, class A, at most 60 V", subject(found("16", "3.65 V")));
        assertEquals("pack, class A, at most 60 V", subject(found("15", "4.0 V")));
    }

    /** 15 x 4.2 V = 63.0 V, though 15 x 3.6 V = 54 V; 15 x 4.01 V = 60.15 V. */
    @Test
    void fullCellsDecideAndNotNominalOnes() {
        assertEquals("pack, class B, over 60 V", subject(found("15", "4.2 V")));
        assertEquals(63.0, found("15", "4.2 V").value(), 1e-9);
        assertEquals("pack, class B, over 60 V", subject(found("15", "4.01 V")));
    }

    @Test
    void aPackThatMayBeHighVoltageIsTreatedAsHigh() {
        assertEquals("pack, class B, over 60 V", subject(found("15", "4.0 V ± 0.1 V")));
    }

    /** 400 x 3.75 V = 1500 V. */
    @Test
    void whatTheRulesDoNotSpeakOfIsNotMet() {
        assertEquals(Verdict.MET, found("400", "3.75 V").verdict());
        assertEquals(Verdict.NOT_MET, found("401", "3.75 V").verdict());
        assertEquals(Verdict.UNDECIDED, found("400", "3.75 V ± 0.01 V").verdict());
    }

    @Test
    void cellsNobodyReadAreNoEvidence() {
        var found = Confirmed.sound().without("pack.cell").found(new VoltageClass());
        assertEquals(Verdict.NO_EVIDENCE, found.verdict());
        assertEquals(List.of("pack.cell.max-voltage"), found.missing());
        assertEquals("pack", subject(found));
    }

    @Test
    void aClassNobodyConfirmedClearsNothing() {
        var job = of("88", "4.2 V").without("confirmations");
        assertEquals(Verdict.MET_UNCONFIRMED, job.found(new VoltageClass()).verdict());
        assertEquals(
                Verdict.MET, job.homeSet("us-federal").found(new VoltageClass()).verdict());
    }
}
