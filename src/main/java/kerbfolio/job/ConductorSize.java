package kerbfolio.job;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The size of a conductor as marked on it: a designation, not a quantity, for a gauge is no area.
 *
 * @param scale by which it is counted
 * @param figure square millimetres, thousands of circular mils, or the gauge number; 1/0 counts as 0, 4/0 as -3
 * @param text as marked
 */
public record ConductorSize(Scale scale, double figure, String text) {
    /** By what a size is counted. */
    public enum Scale {
        SQUARE_MILLIMETRES,
        GAUGE,
        KCMIL
    }

    private static final Pattern METRIC = Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?) ?mm(?:²|2|\\^2)");
    private static final Pattern GAUGE =
            Pattern.compile("(?:awg ?([1-4]/0|0|[1-3]?[0-9])|([1-4]/0|0|[1-3]?[0-9]) ?awg)");
    private static final Pattern MILS = Pattern.compile("([0-9]{2,4}) ?kcmil");

    /** Reads a size as marked; empty if it is none. */
    public static Optional<ConductorSize> of(String marked) {
        String text = marked.strip().toLowerCase(Locale.ROOT).replaceAll("\\h+", " ");
        Matcher metric = METRIC.matcher(text);
        if (metric.matches()) {
            return sized(Scale.SQUARE_MILLIMETRES, Double.parseDouble(metric.group(1)), marked);
        }
        Matcher mils = MILS.matcher(text);
        if (mils.matches()) {
            return sized(Scale.KCMIL, Double.parseDouble(mils.group(1)), marked);
        }
        Matcher gauge = GAUGE.matcher(text);
        if (gauge.matches()) {
            String number = gauge.group(1) == null ? gauge.group(2) : gauge.group(1);
            double figure = number.endsWith("/0") ? '1' - number.charAt(0) : Integer.parseInt(number);
            return Optional.of(new ConductorSize(Scale.GAUGE, figure, marked.strip()));
        }
        return Optional.empty();
    }

    private static Optional<ConductorSize> sized(Scale scale, double figure, String marked) {
        return figure > 0 ? Optional.of(new ConductorSize(scale, figure, marked.strip())) : Optional.empty();
    }

    @Override
    public String toString() {
        return text;
    }
}
