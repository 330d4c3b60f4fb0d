package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

/** Somebody with these pages and nothing else. */
class MakeDeadPagesTest {
    private static String printed(JobText job) {
        return Paper.text(DossierPdf.write(job.dossier(), List.of(), Map.of(), null))
                .replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void thePagesSayWhatStaysLiveAndWhatToDo() {
        String text = printed(TractionText.sound());
        for (String said : List.of(
                "Make dead",
                "Derived from 20 recorded links; walk-round: not recorded.",
                "socket of service disconnect",
                "370 V",
                "Hands go only to",
                "Wait 5 minutes.",
                "The wait is not the proof; the reading is.",
                "at most 60 V",
                "NOT DEAD",
                "local codes and licensed people decide")) {
            assertTrue(text.contains(said), said + " in " + text);
        }
    }

    @Test
    void withoutACircuitABlankFormIsPrinted() {
        String text = printed(JobText.blank());
        assertTrue(text.contains("Not derived: no link of the traction circuit is recorded."), text);
        assertTrue(text.contains("take every high-voltage part for live"), text);
        assertFalse(text.contains("What is not listed is not dead"), text);
    }
}
