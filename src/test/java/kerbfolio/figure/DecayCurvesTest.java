package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

class DecayCurvesTest {
    private static Figure decay(JobText job) {
        return Drawn.figure(job.dossier(), "decay-curves");
    }

    /**
     * By hand: 1 + 500 + 20 + 10 + 2 = 533 µF; 1/(1/1000 + 1/40 + 1/500 + 1/500 + 1/200) = 28.57 kΩ;
     * 533e-6 · 28.57e3 · ln(369.6/60) = 27.69 s.
     */
    @Test
    void theBusIsSaidWithItsFigures() {
        String said = decay(TractionText.sound()).alternative().replace('\u00a0', ' ');
        assertTrue(said.contains("533 µF, 28.57 kΩ, from 369.6 V down to 60 V in 27.69 s"), said);
        assertTrue(said.contains("340.00 ± 0.41 V at 0.00 ± 0.58 s, 60.00 ± 0.14 V at 34.00 ± 0.58 s"), said);
    }

    /** The makers of the boxes and of the inverter state 5 min, which is more than three times 27.69 s. */
    @Test
    void theWaitIsDrawn() {
        assertTrue(Drawn.of(decay(TractionText.sound())).texts().contains("wait 5 min"));
        assertTrue(decay(TractionText.sound()).caption().contains("Wait 5 min: "));
    }

    @Test
    void aReadingDischargedOnPurposeIsNotDrawn() {
        JobText job = TractionText.sound().alter("readings.decay", "inverter", "active: no", "active: yes");
        assertTrue(!decay(job).alternative().contains("crosses"), decay(job).alternative());
    }

    @Test
    void aBusWithAnUnknownCapacitorIsSaidNotToBeDrawn() {
        JobText job = TractionText.sound()
                .add("parts", "{ id: spare, name: spare heater, role: heater }")
                .add("parts", "{ id: k, name: spare contactor, role: contactor }")
                .add("links", "{ id: s1, kind: high-voltage, from: junction-box/+, to: k/1 }")
                .add("links", "{ id: s2, kind: high-voltage, from: k/2, to: spare/+ }")
                .add("links", "{ id: s3, kind: high-voltage, from: spare/-, to: junction-box/- }");
        String caption = decay(job).caption();
        assertTrue(caption.contains(" not drawn: a capacitance or a bleed resistance is not recorded."), caption);
    }

    @Test
    void withoutAKnownBusThereIsNoDrawing() {
        assertTrue(Figures.of(CircuitDrawingTest.three().dossier()).stream()
                .noneMatch(figure -> figure.id().equals("decay-curves")));
    }

    @Test
    void decadesOfALogarithmicAxisAreEquallyLong() {
        Axis axis = Axis.decades(0.02, 700, 0, 300);
        assertEquals(0.01, axis.from(), 1e-12);
        assertEquals(1000, axis.to(), 1e-9);
        assertEquals(axis.at(1) - axis.at(0.1), axis.at(100) - axis.at(10), 1e-9);
        assertEquals(6, axis.ticks().size());
        assertEquals(300, axis.at(5000), 1e-9);
    }

    @Test
    void aStraightAxisEndsAtARoundFigure() {
        Axis axis = Axis.upTo(369.6, 100, 0);
        assertEquals(400, axis.to(), 1e-9);
        assertEquals(50, axis.at(200), 1e-9);
        assertEquals(5, axis.ticks().size());
    }
}
