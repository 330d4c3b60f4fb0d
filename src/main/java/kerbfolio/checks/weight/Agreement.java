package kerbfolio.checks.weight;

import kerbfolio.formula.Formula;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.source.Source;

/** Whether two ways to the same figure agree within what is known of them: the difference over its own expanded uncertainty. */
final class Agreement {
    static final Formula DIFFERENCE = Formula.of("r = x - y")
            .giving("difference", "kg")
            .with("x", "first figure", "kg")
            .with("y", "second figure", "kg")
            .from(Source.STATICS.clause("difference of two masses"))
            .build();

    static final Formula NUMBER = Formula.of("E = abs(r)/U_r")
            .giving("difference over its expanded uncertainty", "1")
            .with("r", "difference", "kg")
            .with("U_r", "expanded uncertainty of the difference, k = 2", "kg")
            .needs("U_r > 0*[kg]")
            .from(Source.ISO_13528.clause("9.7, En score (clause from memory)"))
            .build();

    private Agreement() {}

    static Working of(String what, Term one, Term other) {
        Working difference = difference(what, one, other);
        return Working.fill(NUMBER)
                .put("r", new Plain(difference))
                .put("U_r", difference.doubt())
                .work();
    }

    static Working difference(String what, Term one, Term other) {
        return Working.fill(DIFFERENCE)
                .named("difference, " + what)
                .put("x", one)
                .put("y", other)
                .work();
    }
}
