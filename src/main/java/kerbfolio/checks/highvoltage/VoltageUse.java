package kerbfolio.checks.highvoltage;

import kerbfolio.car.Car;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.source.Source;

/** How much of the voltage something is rated for the full pack takes. */
final class VoltageUse {
    static final Formula USE = Formula.of("u = U_max/U_r")
            .giving("use of the rated voltage", "%")
            .with("U_max", "highest working voltage", "V")
            .with("U_r", "rated direct voltage", "V")
            .needs("U_r > 0*[V]")
            .from(Source.CIRCUITS.clause("share of a rating"))
            .build();

    private VoltageUse() {}

    static Working of(Car car, Term rated) {
        return Working.fill(USE)
                .put("U_max", car.pack().highestVoltage())
                .put("U_r", rated)
                .work();
    }
}
