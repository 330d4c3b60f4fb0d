package kerbfolio.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The name somebody meant. */
class NearestTest {
    @Test
    void slipsAreCountedAsByDamerau() {
        // kitten, sitting: 3 is the textbook example of Levenshtein's distance; CA, ABC: 3 that of optimal string
        // alignment, where a swapped pair is not touched again (both from memory).
        assertEquals(3, Nearest.slips("kitten", "sitting"));
        assertEquals(3, Nearest.slips("CA", "ABC"));
        assertEquals(1, Nearest.slips("serail", "serial"));
        assertEquals(5, Nearest.slips("", "abcde"));
        assertEquals(0, Nearest.slips("same", "same"));
    }

    @Test
    void aNameThatIsNotNearIsNotSuggested() {
        List<String> keys = List.of("batteries", "parts", "links");
        assertEquals(Optional.of("batteries"), Nearest.to("bateries", keys));
        assertEquals(Optional.of("parts"), Nearest.to("part", keys));
        assertEquals(Optional.empty(), Nearest.to("documents", keys));
        assertEquals(Optional.empty(), Nearest.to("x", List.of()));
        assertEquals("; did you mean `links`?", Nearest.hint("lniks", keys));
        assertEquals("; known here: batteries, parts, links", Nearest.hint("documents", keys));
        assertEquals("", Nearest.hint("documents", List.of()));
    }
}
