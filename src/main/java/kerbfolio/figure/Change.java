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

    /** A sentence of all that is known; empty where nothing is. */
    String words() {
        String known = Words.joined(
                ", ",
                before.isKnown() ? before.text() + " as received" : "",
                after.isKnown() ? after.text() + " as delivered" : "",
                change.isKnown() ? "change " + change.signed() : "");
        return known.isEmpty() ? "" : Character.toUpperCase(what.charAt(0)) + what.substring(1) + ": " + known + ".";
    }

    /** The most that can be said of it within a sentence; empty where nothing is known. */
    String gist() {
        if (change.isKnown()) {
            return "the " + what + " " + change.gained();
        }
        return after.isKnown()
                ? "the " + what + " carries " + after.text() + " as delivered"
                : before.isKnown() ? "the " + what + " carried " + before.text() + " as received" : "";
    }
}
