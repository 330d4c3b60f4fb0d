package kerbfolio.checks.highvoltage;

import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.source.Source;

/** How much of the current something is rated for it carries. */
final class CurrentUse {
    static final Formula USE = Formula.of("u = I/(n*I_r)")
            .giving("use of the rated current", "%")
            .with("I", "current", "A")
            .with("n", "strings that share it", "1")
            .with("I_r", "rated current", "A")
            .needs("n*I_r > 0*[A]")
            .from(Source.CIRCUITS.clause("currents in parallel"))
            .build();

    private CurrentUse() {}

    static Working of(String what, Term current, Term sharing, Term rated) {
        return Working.fill(USE)
                .named("use of the rated current of " + what)
                .put("I", current)
                .put("n", sharing)
                .put("I_r", rated)
                .work();
    }
}
