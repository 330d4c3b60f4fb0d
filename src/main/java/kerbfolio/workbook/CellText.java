package kerbfolio.workbook;

import java.util.regex.Pattern;

/**
 * Text from a job file, made fit to lie in a cell: it stays text whatever it begins with, and nothing in it breaks the
 * file.
 *
 * @param stored what is written into the cell
 * @param isQuoted whether a spreadsheet that is asked to edit it would take it for a formula
 */
record CellText(String stored, boolean isQuoted) {
    /** What a cell holds at most. */
    static final int LONGEST = 32_767;

    private static final String CUT = " [cut]";
    private static final String FORMULA_BEGINS = "=+-@\t\r";

    /** A spreadsheet reads {@code _x003D_} as an equals sign; written so, the underscore itself is what is meant. */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private static final String UNDERSCORE = "_x005F_";

    static CellText of(String text) {
        String clean = ESCAPE.matcher(printable(text)).replaceAll(UNDERSCORE);
        boolean quoted = !clean.isEmpty() && FORMULA_BEGINS.indexOf(clean.charAt(0)) >= 0;
        return new CellText(clean.length() <= LONGEST ? clean : cut(clean), quoted);
    }

    private static String cut(String text) {
        int end = LONGEST - CUT.length();
        boolean splitsPair = Character.isHighSurrogate(text.charAt(end - 1));
        return text.substring(0, splitsPair ? end - 1 : end) + CUT;
    }

    /** Characters the file format cannot hold are shown as replaced, not dropped. */
    private static String printable(String text) {
        var printable = new StringBuilder();
        text.codePoints().forEach(point -> printable.appendCodePoint(isHeld(point) ? point : 0xFFFD));
        return printable.toString();
    }

    private static boolean isHeld(int point) {
        if (point < ' ') {
            return point == '\t' || point == '\n' || point == '\r';
        }
        boolean control = point >= 0x7F && point < 0xA0;
        boolean surrogate = point >= 0xD800 && point <= 0xDFFF;
        return !control && !surrogate && point != 0xFFFE && point != 0xFFFF;
    }
}
