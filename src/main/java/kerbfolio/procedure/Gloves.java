package kerbfolio.procedure;

import java.util.List;
import kerbfolio.car.Car;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Table;

/** Insulating gloves by the highest voltage of the pack. */
final class Gloves {
    /** Workshops take no lower class for traction voltage, even where one would do (common practice, no source). */
    private static final String LEAST = "0";

    /** ASTM F496, in-service care of insulating gloves, as public reproductions give it. */
    static final String RETEST =
            "Tested by a laboratory within the last 6 months; gloves that lay unused are put into use"
                    + " only within 12 months of their test (ASTM F496). Leather gloves over them.";

    private Gloves() {}

    /** The class in words. */
    static String words(Car car) {
        Term highest = car.pack().highestVoltage();
        Table table = Table.of("glove-class");
        List<String> classes = List.copyOf(table.rows().keySet());
        double volts =
                highest.amount().map(amount -> amount.si() + amount.expanded()).orElse(0.0);
        String first = classes.stream()
                .skip(classes.indexOf(LEAST))
                .filter(key -> rating(table, key).si() >= volts)
                .findFirst()
                .orElse("");
        if (first.isEmpty()) {
            return "no class of the table reaches " + Said.volts(highest) + "; consult";
        }
        Term rated = car.evidence().tabled(table, "", "gloves of class " + first, first);
        return "Insulating gloves of class " + first + " or higher, to " + rating(table, first) + " of direct current"
                + (highest.amount().isEmpty()
                        ? "; the highest voltage of the pack is not recorded, so consult"
                        : "; the pack has at most " + Said.volts(highest))
                + (rated.reservations().isEmpty() ? "." : " (figure not confirmed against IEC 60903).");
    }

    private static Quantity rating(Table table, String key) {
        return Quantity.of(table.find(key).orElseThrow());
    }
}
