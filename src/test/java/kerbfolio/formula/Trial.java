package kerbfolio.formula;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Citation;

/** Short formulas for the tests of the language, and figures to fill them. */
final class Trial {
    static final Citation SOURCE = new Citation("made for a test", "");

    private Trial() {}

    /** A formula {@code x = expression}, still to be told its symbols. */
    static FormulaBuilder begun(String expression, String unit) {
        return Formula.of("x = " + expression).giving("result", unit).from(SOURCE);
    }

    /** A formula with symbols declared by unit, as in {@code "U_0 [V]"}; a list is {@code "m[] [kg]"}. */
    static Formula formula(String expression, String unit, String... symbols) {
        FormulaBuilder builder = begun(expression, unit);
        for (String symbol : symbols) {
            String[] parts = symbol.split(" ", 2);
            String of = parts[1].substring(1, parts[1].length() - 1);
            if (parts[0].endsWith("[]")) {
                builder.each(parts[0].substring(0, parts[0].length() - 2), "entry", of);
            } else {
                builder.with(parts[0], "figure", of);
            }
        }
        return builder.build();
    }

    /** A formula filled with exact figures, as in {@code "a = 3 m"}; its units are checked first. */
    static Working work(String expression, String unit, String... figures) {
        FormulaBuilder builder = begun(expression, unit);
        var terms = new HashMap<String, Term>();
        for (String figure : figures) {
            String[] parts = figure.split(" = ", 2);
            Known term = exact(parts[1]);
            builder.with(
                    parts[0],
                    "figure",
                    term.unit().text().isEmpty() ? "1" : term.unit().text());
            terms.put(parts[0], term);
        }
        Formula formula = builder.build();
        formula.checkUnits();
        Working.Filling filling = Working.fill(formula);
        terms.forEach(filling::put);
        return filling.work();
    }

    /** The result in the unit asked for. */
    static double value(String expression, String unit, String... figures) {
        return in(work(expression, unit, figures));
    }

    /** The result of a formula of bare numbers. */
    static double value(String expression) {
        return value(expression, "1");
    }

    static double in(Working working) {
        return working.unit().fromSi(working.amount().orElseThrow().si());
    }

    static Known exact(String text) {
        return Known.exact("test", text, Quantity.of(text), Basis.STATED, "a test");
    }

    static List<Known> exact(List<String> texts) {
        return texts.stream().map(Trial::exact).toList();
    }

    /** A figure with one cause of its own: {@code standard} is its standard uncertainty, in a unit. */
    static Known measured(String text, String cause, String standard) {
        Quantity doubt = Quantity.of(standard);
        return moved(text, Map.of(cause, doubt.number() * doubt.unit().factor()));
    }

    /** A figure with the given causes, their effects in SI. */
    static Known moved(String text, Map<String, Double> effects) {
        Quantity quantity = Quantity.of(text);
        return new Known(
                "test", text, quantity, new Amount(quantity.si(), effects), Basis.MEASURED, "a test", List.of());
    }

    /** What a formula is refused with. */
    static String fault(Runnable building) {
        try {
            building.run();
        } catch (FormulaFault fault) {
            return String.valueOf(fault.getMessage());
        }
        throw new AssertionError("nothing was refused");
    }
}
