package kerbfolio.pdf;

/** Keeps out of a page what no XML page may hold. */
final class Characters {
    /** The sign that stands where something unprintable stood. */
    static final char REPLACEMENT = '\uFFFD';

    private Characters() {}

    /**
     * Puts the replacement sign in place of every character that XML 1.0 (fifth edition, section 2.2, production 2)
     * does not allow: control characters, lone surrogates, U+FFFE and U+FFFF.
     */
    static String legal(String text) {
        if (text.codePoints().allMatch(Characters::isLegal)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().map(c -> isLegal(c) ? c : REPLACEMENT).forEach(clean::appendCodePoint);
        return clean.toString();
    }

    /** Writes text so that it stays text between two XML tags. */
    static String escaped(String text) {
        return legal(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static boolean isLegal(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0xD7FF)
                || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }
}
