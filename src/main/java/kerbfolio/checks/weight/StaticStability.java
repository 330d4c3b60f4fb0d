package kerbfolio.checks.weight;

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

/** A plausibility figure: a rigid car tips sideways at this many g. */
public final class StaticStability implements Check {
    static final Formula FACTOR = Formula.of("S = (T_F + T_R)/(4*h)")
            .giving("static stability factor", "1")
            .with("T_F", "front track", "mm")
            .with("T_R", "rear track", "mm")
            .with("h", "height of the centre of gravity", "mm")
            .needs("h > 0*[m]")
            .from(Source.NHTSA_ROLLOVER.clause("half the mean track over the height"))
            .build();

    @Override
    public String question() {
        return "Is the static stability factor above the lowest class average published?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Working factor = Working.fill(FACTOR)
                .put("T_F", car.size().track(Axle.FRONT))
                .put("T_R", car.size().track(Axle.REAR))
                .put("h", car.centre().height())
                .work();
        return Stream.of(Finding.judged("as delivered", factor, limits, "static-stability"));
    }
}
