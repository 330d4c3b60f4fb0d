package kerbfolio.reading;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import kerbfolio.quantity.Dim;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;

/** A written figure to a quantity of the kind its key asks for. */
final class Figures {
    /** What a shop would write each kind of figure in; a complaint names those of the right kind. */
    private static final double LARGEST = 1e9;

    private static final List<String> USUAL = List.of(
            ("kg lb g t oz | m mm in ft cm km mi | s min h | A mA | V kV mV | Ω mΩ kΩ MΩ | W kW hp | J kJ kWh Wh | N kN lbf"
                            + " | N·m lbf·ft | bar kPa psi | °C °F K | km/h mph | N/mm lbf/in | L gal qt | mm² in²"
                            + " | F µF | Ah | Hz | m/s²")
                    .split("[ |]+"));

    /** A decimal comma, or thousands set apart. */
    private static final Pattern SEPARATED = Pattern.compile("[0-9][,' \u00A0\u202F][0-9]");

    private Figures() {}

    /**
     * Reads a figure.
     *
     * @throws IllegalArgumentException with what to write instead
     */
    static Quantity read(String text, In in) {
        Quantity quantity = parsed(text, in);
        if (!in.value().equals("*")) {
            refuseOtherKind(quantity, in);
        }
        if (Math.abs(quantity.number()) > LARGEST || Math.abs(quantity.si()) > LARGEST * LARGEST) {
            throw new IllegalArgumentException("`" + quantity + "` is larger than anything on a car");
        }
        if (quantity.half().isPresent() && quantity.half().getAsDouble() == 0) {
            throw new IllegalArgumentException(
                    "`" + quantity + "` claims to be without error; write its limit of error after ± or leave it out");
        }
        if (quantity.si() < 0 && !in.signed()) {
            throw new IllegalArgumentException(
                    "`" + quantity + "` is below zero, which this cannot be; write it without the minus sign");
        }
        return quantity;
    }

    private static Quantity parsed(String text, In in) {
        try {
            return Quantity.of(text);
        } catch (IllegalArgumentException e) {
            if (in.value().equals("1")) {
                throw new IllegalArgumentException(Quoted.of(text) + " is no number; " + example(in), e);
            }
            if (SEPARATED.matcher(text).find()) {
                throw new IllegalArgumentException(
                        Quoted.of(text) + " is not a figure: its decimal sign is a point, its thousands stand without"
                                + " a separator; " + example(in),
                        e);
            }
            throw new IllegalArgumentException(e.getMessage() + "; " + example(in), e);
        }
    }

    private static void refuseOtherKind(Quantity quantity, In in) {
        Unit asked = Unit.of(in.value());
        Unit written = quantity.unit();
        if (asked.text().isEmpty()) {
            if (!written.text().isEmpty()) {
                throw new IllegalArgumentException("`" + quantity + "` has a unit where none belongs; " + example(in));
            }
        } else if (written.text().isEmpty()) {
            throw new IllegalArgumentException("`" + quantity + "` has no unit; " + example(in));
        } else if (!sameKind(asked, written)) {
            throw new IllegalArgumentException(
                    "`" + quantity + "` is in " + written + ", which is another kind of unit; " + example(in));
        }
    }

    /** Percent and angle are both without dimension; a key that is a difference of temperatures takes no °C. */
    private static boolean sameKind(Unit asked, Unit written) {
        boolean likeNone = !asked.dim().equals(Dim.NONE) || angle(asked) == angle(written);
        return asked.measuresLike(written) && likeNone && (asked.offset() != 0 || written.offset() == 0);
    }

    private static boolean angle(Unit unit) {
        return unit.text().equals("°") || unit.text().equals("rad");
    }

    private static String example(In in) {
        if (in.value().equals("1")) {
            return "write a bare number, such as 4 or 0.95";
        }
        if (in.value().equals("*")) {
            return "write a number and its unit";
        }
        Unit asked = Unit.of(in.value());
        List<String> others = USUAL.stream()
                .filter(unit -> !unit.equals(asked.text()) && sameKind(asked, Unit.of(unit)))
                .toList();
        return "write a number and its unit: "
                + String.join(
                        ", ",
                        Stream.concat(Stream.of(asked.text()), others.stream()).toList());
    }
}
