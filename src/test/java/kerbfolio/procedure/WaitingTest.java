package kerbfolio.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** Ten minutes where the decay is not known: common practice, no source. */
class WaitingTest {
    private static int minutes(String makers) {
        return Waiting.of(TractionText.sound()
                        .alter("parts", "inverter", "makers-wait: 5 min", "makers-wait: " + makers)
                        .car())
                .minutes();
    }

    @Test
    void aMakersWaitCountsWhereItIsLonger() {
        assertEquals(10, minutes("9 min"));
        assertEquals(15, minutes("15 min"));
        assertEquals(13, minutes("12.1 min"));
        assertEquals(20, minutes("1200 s"));
    }
}
