package kerbfolio.figure;

import kerbfolio.dossier.Shown;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.UnitSystem;

/** A figure of the job as it is drawn, and as it is printed everywhere else. */
record Value(Term term, Shown shown) {
    private static final String MINUS = "\u2212";

    static Value of(Term term, UnitSystem units) {
        return new Value(term, Shown.of(term, units));
    }

    boolean isKnown() {
        return shown.isKnown();
    }

    /** The value, in SI; 0 where there is none. */
    double si() {
        return term.amount().map(Amount::si).orElse(0.0);
    }

    /** Its expanded uncertainty, k = 2, in SI; 0 where there is none. */
    double reach() {
        return term.amount().map(Amount::expanded).orElse(0.0);
    }

    /** Whether it lies on one side of zero with its whole uncertainty. */
    boolean hasSide() {
        return isKnown() && Math.abs(si()) > reach();
    }

    String text() {
        return isKnown() ? shown.large() : "not known";
    }

    /** With a plus sign before what is more than nothing. */
    String signed() {
        return isKnown() && !text().startsWith(MINUS) && !isNothing() ? "+" + text() : text();
    }

    /** Whether it is zero as printed. */
    private boolean isNothing() {
        return text().matches("[0.]++(?:\\P{Nd}.*)?");
    }

    /** Without a sign, where the words around it say which way. */
    String unsigned() {
        return text().startsWith(MINUS) ? text().substring(1) : text();
    }

    /** A distance from the centre line, with the side it lies on. */
    String sideways() {
        return unsigned() + (isNothing() ? "" : si() < 0 ? " left" : " right");
    }

    /** The same within a sentence. */
    String besideCentreLine() {
        return sideways() + (isNothing() ? " from" : " of") + " the centre line";
    }

    /** What a change comes to, in words. */
    String gained() {
        return hasSide()
                ? (si() > 0 ? "gained " : "lost ") + unsigned()
                : "did not change beyond its uncertainty (" + signed() + ")";
    }
}
