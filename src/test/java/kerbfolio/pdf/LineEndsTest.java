package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineEndsTest {
    private static List<String> pieces(String text) {
        var pieces = new ArrayList<String>();
        int from = 0;
        for (int end = 1; end < text.length(); end++) {
            if (LineEnds.mayEnd(text, end)) {
                pieces.add(text.substring(from, end));
                from = end;
            }
        }
        pieces.add(text.substring(from));
        return pieces;
    }

    @Test
    void aLineEndsAfterABlankAndNotInsideANameOrAUnit() {
        assertEquals(
                List.of("c-front-plus, ", "500\u00a0Ω/V ", "at ", "125\u00a0°C"),
                pieces("c-front-plus, 500\u00a0Ω/V at 125\u00a0°C"));
    }

    @Test
    void aWordTooLongForAnyColumnEndsAtItsStrokes() {
        assertEquals(
                List.of("photos/", "left-", "front-", "battery-", "box-", "open.jpg"),
                pieces("photos/left-front-battery-box-open.jpg"));
    }
}
