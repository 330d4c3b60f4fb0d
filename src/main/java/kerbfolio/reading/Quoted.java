package kerbfolio.reading;

/** Somebody's text inside a message: in one line, of a length that can be read, and harmless to a terminal. */
public final class Quoted {
    private static final int MOST = 40;
    private static final int LINE = 600;

    private Quoted() {}

    /** A text between quotes, cut after forty characters. */
    public static String of(String text) {
        return "`" + cut(text, MOST) + "`";
    }

    /** A whole message as one line. */
    static String line(String message) {
        return cut(message.replaceAll("\\p{Cntrl}", " "), LINE);
    }

    private static String cut(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, most)) + "…";
    }
}
