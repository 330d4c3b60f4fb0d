package kerbfolio.reading;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** One written text to the value its key takes. */
final class Scalars {
    private Scalars() {}

    static boolean reads(Class<?> type) {
        return type == String.class
                || type == Quantity.class
                || type == LocalDate.class
                || type == boolean.class
                || type == Boolean.class
                || type.isEnum();
    }

    /**
     * Reads a value.
     *
     * @throws IllegalArgumentException with what to write instead
     */
    static Object read(String text, Class<?> type, @Nullable In in) {
        if (type == String.class) {
            return text;
        }
        if (type == Quantity.class) {
            if (in == null) {
                throw new IllegalStateException("a quantity whose unit is not declared");
            }
            return Figures.read(text, in);
        }
        if (type == LocalDate.class) {
            return date(text.strip());
        }
        if (type.isEnum()) {
            return choice(text.strip(), type);
        }
        if (type == boolean.class || type == Boolean.class) {
            return yes(text.strip());
        }
        throw new IllegalStateException("no text is read as " + type);
    }

    /** Takes the place of what could not be read and may not be absent. */
    static Object standIn(Class<?> type) {
        if (type == String.class) {
            return "";
        }
        if (type == LocalDate.class) {
            return LocalDate.MAX;
        }
        if (type == Quantity.class) {
            return Quantity.of(0, Unit.ONE);
        }
        return type.isEnum() ? type.getEnumConstants()[0] : false;
    }

    /** How the values of an enum are written in a file. */
    static List<String> choices(Class<?> type) {
        var choices = new ArrayList<String>();
        for (Object constant : type.getEnumConstants()) {
            choices.add(word(constant));
        }
        return choices;
    }

    /** How one value of an enum is written in a file. */
    static String word(Object constant) {
        return constant.toString().toLowerCase(Locale.ROOT);
    }

    private static Object choice(String text, Class<?> type) {
        List<String> choices = choices(type);
        int found = choices.indexOf(text.toLowerCase(Locale.ROOT));
        if (found < 0) {
            throw new IllegalArgumentException(Quoted.of(text) + " is none of its words, " + String.join(", ", choices)
                    + Nearest.to(text, choices)
                            .map(name -> "; did you mean `" + name + "`?")
                            .orElse("; write one of them"));
        }
        return type.getEnumConstants()[found];
    }

    private static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    Quoted.of(text) + " is not a day of the calendar; write year-month-day, such as 2026-03-31", e);
        }
    }

    private static boolean yes(String text) {
        return switch (text) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default ->
                throw new IllegalArgumentException(Quoted.of(text) + " is neither yes nor no; write one of them");
        };
    }
}
