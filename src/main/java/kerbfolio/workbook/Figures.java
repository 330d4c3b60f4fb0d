package kerbfolio.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.check.Limit;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Dim;

/**
 * Tells which terms are the same figure, so that each stands in the workbook once: a reading by its place in the job
 * file, a limit by its set and key, a working by its formula and the figures that fill it.
 */
final class Figures {
    /** A reading and what was found at the same place, such as that something is recorded there, are two figures. */
    private record Reading(String path, String name, Basis basis) {}

    private record Missing(String path, String name, Dim dim) {}

    private record Required(String set, String key) {}

    private record Computed(Formula formula, List<List<Integer>> inputs) {}

    private final Map<Object, Integer> numbers = new HashMap<>();
    private final IdentityHashMap<Working, Integer> workings = new IdentityHashMap<>();

    /** The same number for the same figure. */
    int of(Term term) {
        if (term instanceof Plain plain) {
            return of(plain.of());
        }
        if (term instanceof Working working) {
            Integer seen = workings.get(working);
            if (seen == null) {
                seen = number(computed(working));
                workings.put(working, seen);
            }
            return seen;
        }
        return number(leaf(term));
    }

    List<Integer> of(List<Term> terms) {
        return terms.stream().map(this::of).toList();
    }

    /** The term itself, where only its doubt was set aside. */
    static Term bare(Term term) {
        return term instanceof Plain plain ? bare(plain.of()) : term;
    }

    private Computed computed(Working working) {
        var inputs = new ArrayList<List<Integer>>();
        working.inputs().values().forEach(terms -> inputs.add(of(terms)));
        return new Computed(working.formula(), List.copyOf(inputs));
    }

    private static Object leaf(Term term) {
        if (term instanceof Limit limit) {
            return new Required(limit.set(), limit.key());
        }
        if (term instanceof Absent absent) {
            return new Missing(absent.path(), absent.name(), absent.unit().dim());
        }
        if (term instanceof Known known && !known.path().isEmpty()) {
            return new Reading(known.path(), known.name(), known.basis());
        }
        return term;
    }

    private int number(Object key) {
        Integer number = numbers.get(key);
        if (number == null) {
            number = numbers.size();
            numbers.put(key, number);
        }
        return number;
    }
}
