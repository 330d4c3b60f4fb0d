package kerbfolio.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;

/** Fills a formula with figures drawn from a seeded source, in the units it declares. */
final class Draw {
    private static final int TRIES = 10_000;

    private final Random random;

    Draw(long seed) {
        this.random = new Random(seed);
    }

    /** Figures for which the formula's conditions hold and its result is finite. */
    Working that(Formula formula) {
        for (int i = 0; i < TRIES; i++) {
            Working working = any(formula);
            if (working.amount().isPresent()) {
                return working;
            }
        }
        throw new AssertionError("`" + formula + "` holds for no figures drawn");
    }

    /** Any figures, whether or not the conditions hold. */
    Working any(Formula formula) {
        Working.Filling filling = Working.fill(formula);
        int entries = 1 + random.nextInt(4);
        for (Declared declared : formula.symbols()) {
            if (declared.each()) {
                filling.each(declared.symbol(), list(declared.unit(), entries));
            } else {
                filling.put(declared.symbol(), figure(declared.unit()));
            }
        }
        return filling.work();
    }

    private List<Term> list(Unit unit, int entries) {
        var list = new ArrayList<Term>();
        for (int i = 0; i < entries; i++) {
            list.add(figure(unit));
        }
        return list;
    }

    /** From 0.1 to 100 of the unit, now and then below zero. */
    private Term figure(Unit unit) {
        double size = Math.pow(10, -1 + 3 * random.nextDouble());
        double number = random.nextInt(8) == 0 ? -size : size;
        return Known.exact("drawn", "drawn", Quantity.of(number, unit), Basis.STATED, "drawn");
    }
}
