package kerbfolio.figure;

import kerbfolio.formula.Term;
import kerbfolio.quantity.UnitSystem;

/** What stood somewhere before, what stands there after, and the change. */
record Change(String what, Value before, Value after, Value change) {
    static Change of(String what, Term before, Term after, Term change, UnitSystem units) {
        return new Change(what, Value.of(before, units), Value.of(after, units), Value.of(change, units));
    }

    boolean isKnown() {
        return before.isKnown() || after.isKnown();
    }

    String words() {
        return Character.toUpperCase(what.charAt(0)) + what.substring(1) + ": " + before.text() + " as received, "
                + after.text() + " as delivered, change " + change.signed() + ".";
    }
}
