package kerbfolio.quantity;

import java.util.List;

/**
 * A unit: what stands on paper, its dimension, and how a number in it becomes SI: {@code si = number · factor + offset}.
 * Radian is 1 and percent 0.01; N·m and J, 1/s and Hz share a dimension, so the declared unit is what prints.
 */
public record Unit(String text, Dim dim, double factor, double offset) {
    public static final Unit ONE = new Unit("", Dim.NONE, 1, 0);

    /** Units nobody would know again in base units, and whose dimension belongs to nothing else. */
    private static final List<String> NAMED = List.of("V", "Ω", "F", "W");

    /**
     * Reads a unit as people write it: SI or US, with the ASCII spellings ({@code mm2}, {@code ohm}, {@code lb-ft}).
     *
     * @throws UnknownUnit if it is none this program knows
     */
    public static Unit of(String text) {
        String spelt = oneSign(text.strip());
        if (spelt.isEmpty() || spelt.equals("1")) {
            return ONE;
        }
        return UnitText.read(UnitTable.preferred(spelt), UnitTable.units());
    }

    /** The ohm and the micro sign exist twice in Unicode and look alike: Greek letters and signs of their own. */
    private static String oneSign(String text) {
        return text.replace('\u2126', '\u03a9').replace('\u03bc', '\u00b5');
    }

    /** The coherent SI unit of the same dimension: this one if it is coherent, else by name or in base units. */
    public Unit coherent() {
        if (factor == 1 && offset == 0) {
            return this;
        }
        return NAMED.stream()
                .map(Unit::of)
                .filter(this::measuresLike)
                .findFirst()
                .orElseGet(() -> new Unit(dim.toString(), dim, 1, 0));
    }

    public double toSi(double number) {
        return number * factor + offset;
    }

    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** A difference (an uncertainty, a margin) scales without the offset. */
    public double differenceFromSi(double si) {
        return si / factor;
    }

    public boolean measuresLike(Unit other) {
        return dim.equals(other.dim);
    }

    /** The product of two units without offset; a unit times itself is its square. */
    public Unit times(Unit other) {
        return new Unit(product(other.text), dim.times(other.dim), factor * other.factor, 0);
    }

    private String product(String other) {
        if (text.isEmpty() || other.isEmpty()) {
            return text + other;
        }
        if (text.equals(other)) {
            return (text.chars().allMatch(Character::isLetter) ? text : "(" + text + ")") + "²";
        }
        // Whatever follows a solidus would be read as standing below it.
        return (text.contains("/") ? "(" + text + ")" : text) + "·" + other;
    }

    @Override
    public String toString() {
        return text;
    }
}
