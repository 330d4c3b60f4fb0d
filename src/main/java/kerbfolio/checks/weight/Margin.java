package kerbfolio.checks.weight;

import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.source.Source;

/** What is left between a permitted mass and what the scales say. */
final class Margin {
    static final Formula MARGIN = Formula.of("M = R - m")
            .giving("margin", "kg")
            .with("R", "permitted mass", "kg")
            .with("m", "mass", "kg")
            .from(Source.STATICS.clause("difference of two masses"))
            .build();

    private Margin() {}

    static Working of(Term permitted, Term mass) {
        return Working.fill(MARGIN).put("R", permitted).put("m", mass).work();
    }
}
