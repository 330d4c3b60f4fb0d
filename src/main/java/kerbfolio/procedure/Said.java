package kerbfolio.procedure;

import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import kerbfolio.formula.Term;
import kerbfolio.job.Part;
import kerbfolio.quantity.Notation;
import org.jspecify.annotations.Nullable;

/** How parts and voltages are named in a procedure; what nobody wrote is never left out in silence. */
final class Said {
    static final String CONSULT = "not recorded \u2013 consult";

    private Said() {}

    /** Its name, and where it sits as far as that is written. */
    static String part(Part part) {
        return part.title() + (place(part).isEmpty() ? "" : " (" + place(part) + ")");
    }

    /** Where a part sits; empty if nobody wrote it. */
    static String place(Part part) {
        var position = part.position();
        if (position != null && position.zone() != null) {
            return position.zone();
        }
        var enclosure = part.enclosure();
        String place = enclosure == null || enclosure.place() == null
                ? ""
                : enclosure.place().toString().replace('-', ' ');
        if (position == null || position.x() == null) {
            return part.inside() == null ? place : "inside " + part.inside();
        }
        String x = position.x().toString();
        String along = x.startsWith("-") ? x.substring(1) + " ahead of front axle" : x + " behind front axle";
        return place.isEmpty() ? along : place + ", " + along;
    }

    static String parts(List<Part> parts) {
        return parts.stream().map(Part::title).collect(Collectors.joining(", "));
    }

    /** Whole volts, rounded up. */
    static String volts(Term term) {
        return term.amount()
                .map(amount -> Notation.fixed(amount.si() + amount.expanded(), 0, RoundingMode.CEILING) + "\u00a0V")
                .orElse("not known");
    }

    static String or(@Nullable String written) {
        return written == null || written.isBlank() ? CONSULT : written;
    }
}
