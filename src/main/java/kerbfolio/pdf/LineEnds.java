package kerbfolio.pdf;

import java.util.Iterator;
import java.util.stream.IntStream;
import org.xhtmlrenderer.css.style.CalculatedStyle;
import org.xhtmlrenderer.layout.breaker.BreakPoint;
import org.xhtmlrenderer.layout.breaker.BreakPointsProvider;
import org.xhtmlrenderer.layout.breaker.LineBreakingStrategy;

/**
 * Where a line may end: after a blank. The name of a part or cable, a degree of temperature and a unit with a solidus
 * stay whole; only a word too long for any column, such as the way to a file, may end at its own hyphens and strokes.
 */
final class LineEnds implements LineBreakingStrategy {
    private static final int LONG_WORD = 28;
    private static final String INSIDE = "-/_";

    @Override
    public BreakPointsProvider getBreakPointsProvider(String text, String language, CalculatedStyle style) {
        Iterator<Integer> ends = IntStream.rangeClosed(1, text.length())
                .filter(end -> end == text.length() || mayEnd(text, end))
                .boxed()
                .iterator();
        return () -> ends.hasNext() ? new BreakPoint(ends.next()) : BreakPoint.getDonePoint();
    }

    /** Whether a line may end before the sign at a place of a text. */
    static boolean mayEnd(String text, int end) {
        char last = text.charAt(end - 1);
        boolean isBlank = isBlank(last) && !isBlank(text.charAt(end));
        return isBlank || (INSIDE.indexOf(last) >= 0 && word(text, end) > LONG_WORD);
    }

    private static int word(String text, int at) {
        int begin = at;
        int end = at;
        while (begin > 0 && !isBlank(text.charAt(begin - 1))) {
            begin--;
        }
        while (end < text.length() && !isBlank(text.charAt(end))) {
            end++;
        }
        return end - begin;
    }

    /** A blank that ties is none. */
    private static boolean isBlank(char sign) {
        return Character.isWhitespace(sign);
    }
}
