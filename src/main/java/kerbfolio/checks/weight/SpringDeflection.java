package kerbfolio.checks.weight;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** What the springs should do under the new weight, to hold against what the body did. */
public final class SpringDeflection implements Check {
    static final Formula CHANGE = Formula.of("Delta_z = -Delta_m*g/(2*k)")
            .giving("change of ride height expected", "mm")
            .with("Delta_m", "change on the axle by the scales", "kg")
            .with("k", "rate between body and ground", "N/mm")
            .constant("g", 9.80665, "m/s²", Source.SP_811.clause("B.8, standard acceleration of free fall"))
            .needs("k > 0*[N/mm]")
            .from(Source.STATICS.clause("linear spring"))
            .build();

    @Override
    public String question() {
        return "By how much should the ride height have changed on the springs fitted?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values())
                .map(axle -> Finding.unjudged(
                        axle.toString(),
                        Working.fill(CHANGE)
                                .put("Delta_m", car.change(axle))
                                .put("k", car.suspension(axle).rate())
                                .work()));
    }
}
