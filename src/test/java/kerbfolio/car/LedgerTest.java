package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.Found;
import kerbfolio.JobText;
import kerbfolio.formula.Basis;
import org.junit.jupiter.api.Test;

class LedgerTest {
    private final JobText job = JobText.onTwoAxles()
            .add("parts", "{ id: box, name: battery box, instrument: pads, mass: 200 kg, position: { x: 2000 mm } }")
            .add("parts", "{ id: motor, mass: 80 kg, mass-from: maker, position: { x: -250 mm } }")
            .add("removed", "{ id: engine, name: engine, mass: 150 kg, mass-from: scales, position: { x: 100 mm } }");

    /** By hand: 280 − 150 kg; (200·2000 − 80·250 − 150·100)/2500 = 146 kg at the rear, − 16 kg at the front. */
    @Test
    void whatIsNotOnTheRearAxleIsOnTheFrontOne() {
        Ledger ledger = job.car().ledger();
        assertEquals(130, Found.value(ledger.change()), 1e-9);
        assertEquals(146, Found.value(ledger.change(Axle.REAR)), 1e-9);
        assertEquals(-16, Found.value(ledger.change(Axle.FRONT)), 1e-9);
    }

    @Test
    void aLineKnowsHowItsMassCameToBeKnown() {
        List<Ledger.Line> fitted = job.car().ledger().fitted();
        assertEquals("battery box", fitted.get(0).name());
        assertEquals(Basis.MEASURED, fitted.get(0).mass().basis());
        assertEquals("motor", fitted.get(1).name());
        assertEquals(Basis.STATED, fitted.get(1).mass().basis());
        assertEquals("maker", fitted.get(1).mass().origin());
        assertEquals("A. Tester", fitted.get(1).x().origin());
        assertEquals("engine", job.car().ledger().removed().get(0).name());
        job.add("removed", "{ id: tank, mass: 10 kg, mass-from: scales }");
        assertEquals("tank", job.car().ledger().removed().get(1).name());
    }

    @Test
    void anEmptyLedgerSaysNothing() {
        Ledger ledger = JobText.onTwoAxles().car().ledger();
        assertTrue(ledger.isEmpty());
        assertTrue(ledger.change().amount().isEmpty());
        assertFalse(job.car().ledger().isEmpty());
    }
}
