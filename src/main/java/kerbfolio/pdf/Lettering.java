package kerbfolio.pdf;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Decides, character by character, which face a text of one document is set in, and remembers every character that no
 * face has. Such a character is printed as its code in brackets: a reader must see that something stood there.
 */
final class Lettering {
    private static final int CONTEXT = 24;
    private static final String SHOWN = String.valueOf(Characters.REPLACEMENT);

    private final Fonts fonts;
    private final Map<Integer, String> missing = new LinkedHashMap<>();

    Lettering(Fonts fonts) {
        this.fonts = fonts;
    }

    /** Text of one face, ready to print. */
    record Run(String text, boolean symbol) {}

    /** Splits text into runs of one face; accents are joined to their letters first. */
    List<Run> runs(String text) {
        List<Run> runs = new ArrayList<>();
        StringBuilder run = new StringBuilder();
        boolean symbol = false;
        String joined = Normalizer.normalize(text, Normalizer.Form.NFC);
        for (int c : joined.codePoints().toArray()) {
            boolean sign = !isText(c) && isSign(c);
            if (sign != symbol && run.length() > 0) {
                runs.add(new Run(run.toString(), symbol));
                run.setLength(0);
            }
            symbol = sign;
            run.append(printed(c, sign, joined));
        }
        if (run.length() > 0) {
            runs.add(new Run(run.toString(), symbol));
        }
        return runs;
    }

    private String printed(int c, boolean sign, String text) {
        if (c == Characters.REPLACEMENT) {
            missing.putIfAbsent(c, "an unprintable character was replaced in " + excerpt(text, c));
        }
        if (isDirection(c)) {
            missing.putIfAbsent(
                    c, "U+%04X, which turns the direction of text, was left out of %s".formatted(c, excerpt(text, c)));
            return "";
        }
        if (isFormless(c)) {
            return "";
        }
        if (sign || isText(c)) {
            return Character.toString(c);
        }
        String code = "[U+%04X]".formatted(c);
        missing.putIfAbsent(c, "no face sets %s in %s; printed as %s".formatted(named(c), excerpt(text, c), code));
        return code;
    }

    /** Line ends and tabs are white space to the page and need no glyph. */
    private boolean isText(int c) {
        return c == '\n' || c == '\r' || c == '\t' || (!isRightToLeft(c) && fonts.textHas(c));
    }

    private boolean isSign(int c) {
        return !isRightToLeft(c) && fonts.symbolsHave(c);
    }

    /** Set by an engine that only writes to the right, these letters would stand in the wrong order: codes are honest. */
    private static boolean isRightToLeft(int c) {
        byte direction = Character.getDirectionality(c);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    /** Controls of UAX #9, table 4, and the marks of its section 2.6: with them a text shows otherwise than it reads. */
    private static boolean isDirection(int c) {
        return c == 0x061C
                || c == 0x200E
                || c == 0x200F
                || (c >= 0x202A && c <= 0x202E)
                || (c >= 0x2066 && c <= 0x2069);
    }

    /** Has no form of its own: asks for another form of the sign before it, joins, or allows a break. */
    private static boolean isFormless(int c) {
        return (c >= 0xFE00 && c <= 0xFE0F)
                || (c >= 0xE0100 && c <= 0xE01EF)
                || (c >= 0x200B && c <= 0x200D)
                || c == 0xFEFF;
    }

    private static String named(int c) {
        String name = Character.getName(c);
        return "U+%04X".formatted(c) + (name == null ? "" : " (" + name + ")");
    }

    /** The words around a character, without anything a terminal would obey. */
    private static String excerpt(String text, int c) {
        int at = text.indexOf(c);
        int from = text.offsetByCodePoints(at, -Math.min(CONTEXT, text.codePointCount(0, at)));
        int to = text.offsetByCodePoints(at, Math.min(CONTEXT, text.codePointCount(at, text.length())));
        int word = from == 0 ? 0 : text.indexOf(' ', from);
        int begin = word >= 0 && word < at ? word : from;
        return "\"" + text.substring(begin, to).replaceAll("\\s+", " ").strip().replaceAll("[\\p{Cc}\\p{Cf}]", SHOWN)
                + "\"";
    }

    /** One complaint for each character that could not be printed as written, with the first text it stood in. */
    List<String> complaints() {
        return List.copyOf(missing.values());
    }
}
