package kerbfolio.dossier;

import kerbfolio.formula.Term;
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
        return new Fact(label, Shown.of(term, system), term.basis().word(), term.origin());
    }

    static Fact words(String label, @Nullable String words, String origin) {
        return words == null
                ? new Fact(label, new Shown("\u2014", "", false), "not recorded", "")
                : new Fact(label, new Shown(words, "", true), "stated", origin);
    }
}
