package kerbfolio.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a product of unit symbols: {@code N·m}, {@code mm2}, {@code A·s^0.5/mm²}, {@code kg/m³}. Every factor after a
 * solidus is below it ({@code kg/m/s2}); {@code ·}, {@code *} and {@code .} multiply; brackets are not used.
 */
final class UnitText {
    private static final Pattern FACTOR =
            Pattern.compile("(.*?)(?:\\^(-?[0-9](?:\\.5)?)|([²³⁴])|(?<=[A-Za-zΩµ])([234]))?");

    private UnitText() {}

    static Unit read(String text, Map<String, Unit> known) {
        Unit whole = known.get(text);
        if (whole != null) {
            return whole;
        }
        double factor = 1;
        Dim dim = Dim.NONE;
        var printed = new StringBuilder();
        boolean below = false;
        int start = 0;
        for (int end = 0; end <= text.length(); end++) {
            if (end == text.length() || isSign(text, end)) {
                boolean opens = end == 0 && text.startsWith("/");
                if (start == end && !opens) {
                    throw new UnknownUnit(text);
                }
                Unit part = factor(text.substring(start, end), known, text);
                factor = below ? factor / part.factor() : factor * part.factor();
                dim = below ? dim.over(part.dim()) : dim.times(part.dim());
                printed.append(part.text());
                if (end < text.length()) {
                    below |= text.charAt(end) == '/';
                    printed.append(text.charAt(end) == '/' ? '/' : '·');
                }
                start = end + 1;
            }
        }
        if (factor == 0 || Double.isInfinite(factor)) {
            throw new UnknownUnit(text);
        }
        return new Unit(printed.toString(), dim, factor, 0);
    }

    static Dim dimension(String text, Map<String, Unit> known) {
        return read(text, known).dim();
    }

    /** A full stop multiplies only between letters: {@code N.m}, but not in {@code s^0.5}. */
    private static boolean isSign(String text, int at) {
        char c = text.charAt(at);
        return c == '·'
                || c == '*'
                || c == '/'
                || c == '⋅'
                || (c == '.' && at > 0 && !Character.isDigit(text.charAt(at - 1)));
    }

    private static Unit factor(String text, Map<String, Unit> known, String whole) {
        if (text.isEmpty() || text.equals("1")) {
            return new Unit(text, Dim.NONE, 1, 0);
        }
        Unit plain = known.get(text);
        double power = 1;
        if (plain == null) {
            Matcher matcher = FACTOR.matcher(text);
            if (!matcher.matches() || (plain = known.get(matcher.group(1))) == null) {
                throw new UnknownUnit(whole);
            }
            power = power(matcher);
        }
        if (plain.offset() != 0) {
            throw new UnknownUnit(whole);
        }
        return new Unit(
                plain.text() + superscript(power), plain.dim().power(power), Math.pow(plain.factor(), power), 0);
    }

    private static double power(Matcher matcher) {
        if (matcher.group(2) != null) {
            return Double.parseDouble(matcher.group(2));
        }
        if (matcher.group(3) != null) {
            return "²³⁴".indexOf(matcher.group(3)) + 2;
        }
        return matcher.group(4) != null ? Double.parseDouble(matcher.group(4)) : 1;
    }

    private static String superscript(double power) {
        if (power == 1) {
            return "";
        }
        if (power == 2 || power == 3 || power == 4) {
            return "²³⁴".substring((int) power - 2, (int) power - 1);
        }
        return "^" + (power == Math.rint(power) ? String.valueOf((int) power) : String.valueOf(power));
    }
}
