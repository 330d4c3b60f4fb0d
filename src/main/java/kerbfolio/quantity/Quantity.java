package kerbfolio.quantity;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A figure as somebody wrote it: {@code 592 lb ± 1 lb}, {@code > 550 MΩ}, {@code -20 °C}.
 *
 * @param sense the value itself or a bound
 * @param digits the number exactly as written
 * @param unit the unit it was written in
 * @param half half-width of the interval after ±, in SI, without offset; empty if none was written
 * @param text the whole text exactly as written
 */
public record Quantity(Sense sense, String digits, Unit unit, OptionalDouble half, String text) {
    private static final String NUMBER = "[+\\-\u2212]?[0-9]+(?:\\.[0-9]+)?(?:[eE][+\\-]?[0-9]{1,3})?";
    /** No unit begins like a number, except 1/s. */
    private static final String UNIT = "(?:1/|(?![0-9.,]))[^±+>=<]*?";

    private static final Pattern FORM = Pattern.compile("(?:(>=?|<=?|≥|≤)\\s*)?(" + NUMBER + ")\\s*+(" + UNIT + ")\\s*"
            + "(?:(?:±|\\+/-|\\+-)\\s*(" + NUMBER + ")\\s*+(" + UNIT + "))?");

    /**
     * Reads a figure. The unit may stand once, at the end of all: {@code 592 ± 1 lb}; but a bare figure with a percentage
     * after ± is a bare figure.
     *
     * @throws IllegalArgumentException with a message fit to be shown; {@link UnknownUnit} for the unit alone
     */
    public static Quantity of(String text) {
        Matcher form =
                FORM.matcher(text.replace('\u00a0', ' ').replace('\u202f', ' ').strip());
        if (text.length() > 100 || !form.matches()) {
            throw new IllegalArgumentException(
                    "`" + shortened(text) + "` is not a figure with a unit" + separatorHint(text));
        }
        Unit unit = unit(form.group(3), form.group(5));
        double number = number(form.group(2));
        OptionalDouble half = form.group(4) == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(half(number, unit, number(form.group(4)), form.group(5)));
        if (Double.isInfinite(unit.toSi(number)) || Double.isInfinite(half.orElse(0))) {
            throw new IllegalArgumentException("`" + text.strip() + "` is too large a figure");
        }
        return new Quantity(sense(form.group(1)), form.group(2), unit, half, text.strip());
    }

    /** An exact figure of the program's own, such as a factor or a count. */
    public static Quantity of(double number, Unit unit) {
        String digits = Notation.plain(number);
        return new Quantity(Sense.VALUE, digits, unit, OptionalDouble.empty(), (digits + " " + unit.text()).strip());
    }

    public double number() {
        return number(digits);
    }

    /** The value in SI. */
    public double si() {
        return unit.toSi(number());
    }

    /** Half of the last digit written, in SI: all that is known of a reading that says no more. */
    public double halfLastDigit() {
        String mantissa = digits.split("[eE]")[0];
        int exponent =
                digits.length() > mantissa.length() ? Integer.parseInt(digits.substring(mantissa.length() + 1)) : 0;
        int point = mantissa.indexOf('.');
        int decimals = point < 0 ? 0 : mantissa.length() - point - 1;
        return 0.5 * Math.pow(10, exponent - decimals) * unit.factor();
    }

    private static Unit unit(String first, @Nullable String last) {
        Unit unit = Unit.of(first.isEmpty() && last != null ? last : first);
        return first.isEmpty() && unit.text().equals("%") ? Unit.ONE : unit;
    }

    private static double half(double number, Unit unit, double width, String unitText) {
        Unit written = unitText.isBlank() ? unit : Unit.of(unitText);
        if (width < 0) {
            throw new IllegalArgumentException("what stands after ± is never negative");
        }
        if (written.text().equals("%") && !unit.text().equals("%")) {
            return Math.abs(number) * unit.factor() * width / 100;
        }
        if (!written.measuresLike(unit)) {
            throw new IllegalArgumentException("`" + written + "` after ± does not measure the same as `" + unit + "`");
        }
        return width * written.factor();
    }

    private static Sense sense(@Nullable String sign) {
        if (sign == null) {
            return Sense.VALUE;
        }
        return sign.startsWith(">") || sign.equals("≥") ? Sense.ABOVE : Sense.BELOW;
    }

    private static double number(String digits) {
        double value = Double.parseDouble(digits.replace('\u2212', '-'));
        if (Double.isInfinite(value)) {
            throw new IllegalArgumentException("`" + digits + "` is too large a number");
        }
        return value;
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }

    private static String separatorHint(String text) {
        return text.matches(".*[0-9][,\\h][0-9].*")
                ? "; write the decimal sign as a point and thousands without a separator"
                : "";
    }

    @Override
    public String toString() {
        return text;
    }
}
