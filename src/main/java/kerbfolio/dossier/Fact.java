package kerbfolio.dossier;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * A line of a list of facts: what, how much, and how it came to be known.
 *
 * @param label what it is
 * @param value the figure or words
 * @param basis measured, computed, observed, stated or not recorded
 * @param origin instrument and date, who states it, or the formula's meaning
 */
public record Fact(String label, Shown value, String basis, String origin) {
    static Fact of(String label, Term term, UnitSystem system) {
        return new Fact(label, Shown.of(term, system), term.basis().word(), origin(term));
    }

    /** The same, marked as stated: a sum of published figures is no better than they are. */
    Fact asStated() {
        return new Fact(label, value, Basis.STATED.word(), origin);
    }

    /** What a computed figure was computed from: the instruments and people behind it. */
    private static String origin(Term term) {
        return leaves(term).map(Term::origin).distinct().collect(Collectors.joining("; "));
    }

    private static Stream<Term> leaves(Term term) {
        return term instanceof Working working
                ? working.inputs().values().stream().flatMap(List::stream).flatMap(Fact::leaves)
                : Stream.of(term);
    }

    static Fact words(String label, @Nullable String words, String origin) {
        return words == null
                ? new Fact(label, new Shown("\u2014", "", false), "not recorded", "")
                : new Fact(label, new Shown(words, "", true), "stated", origin);
    }
}
