package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ListingTest {
    @Test
    void namesWithoutACommaStandInOneRun() {
        assertEquals("fuse, charger", Listing.of(List.of("fuse", "charger")));
    }

    @Test
    void oneNameStandsAsItIs() {
        assertEquals("front axle, as delivered", Listing.of(List.of("front axle, as delivered")));
    }

    @Test
    void whatSeveralNamesShareIsSaidOnce() {
        assertEquals(
                "front-box, rear-box: closed; rear-box: opened",
                Listing.of(List.of("front-box, closed", "rear-box, closed", "rear-box, opened")));
        assertEquals("monitor: low, high", Listing.of(List.of("monitor, low", "monitor, high")));
    }
}
