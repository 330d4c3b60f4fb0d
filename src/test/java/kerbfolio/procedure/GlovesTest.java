package kerbfolio.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** Maximum use voltage, direct current: class 0 1500 V, class 1 11 250 V (ASTM D120, IEC 60903, as reproduced in public tables). */
class GlovesTest {
    private static JobText cells(String voltage) {
        return TractionText.sound().with("pack.cell", "{ from: maker, max-voltage: " + voltage + " }");
    }

    private static String words(JobText job) {
        return Gloves.words(job.car()).replace('\u00a0', ' ');
    }

    @Test
    void theClassReachesTheHighestVoltageOfThePack() {
        assertEquals(
                "Insulating gloves of class 0 or higher, to 1500 V of direct current; the pack has at most 370 V (figure"
                        + " not confirmed against IEC 60903).",
                words(TractionText.sound()));
        // 88 groups of 17 V are 1496 V, of 17.1 V 1504.8 V.
        assertEquals("class 0", words(cells("17 V")).substring(21, 28));
        assertEquals("class 1", words(cells("17.1 V")).substring(21, 28));
        assertEquals("class 1", words(cells("17.0 V ± 0.1 V")).substring(21, 28));
        assertEquals("no class of the table reaches 12320 V; consult", words(cells("140 V")));
    }

    @Test
    void aTableTheShopConfirmedIsNotDoubted() {
        assertEquals(
                "Insulating gloves of class 0 or higher, to 1500 V of direct current; the pack has at most 370 V.",
                words(TractionText.sound().confirming("tables", "glove-class")));
    }

    @Test
    void anUnknownVoltageIsSaid() {
        assertEquals(
                "Insulating gloves of class 0 or higher, to 1500 V of direct current; the highest voltage of the pack is"
                        + " not recorded, so consult (figure not confirmed against IEC 60903).",
                words(JobText.blank()));
    }
}
