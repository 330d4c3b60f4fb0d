package kerbfolio.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void runsAndSingleNumbersAreRead() {
        assertEquals(33, Numbers.of("1-32, 34").all().size());
        assertEquals(List.of(7), List.copyOf(Numbers.of("7").all()));
        assertEquals(List.of(1, 2, 3), List.copyOf(Numbers.of(" 2 – 3 ,1, 2").all()));
    }

    @Test
    void whatIsMissingIsSaidAsRuns() {
        assertEquals("33, 35\u201336", Numbers.of("1-32, 34").missingUpTo(36).toString());
        assertEquals("none", Numbers.of("1-4").missingUpTo(4).toString());
        assertEquals("1\u20132", Numbers.none().missingUpTo(2).toString());
    }

    @Test
    void twoListsCountTogether() {
        assertEquals("1\u20135", Numbers.of("1-3").with(Numbers.of("3-5")).toString());
    }

    @Test
    void anythingElseIsRefused() {
        for (String text : List.of("", "all", "1-", "1,,2", "0", "5-3", "1.5", "-1", "1-99999", "1-999999999")) {
            assertThrows(IllegalArgumentException.class, () -> Numbers.of(text), text);
        }
    }
}
