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

/** Where the mass sits decides how the car brakes and turns. */
public final class FrontShare implements Check {
    static final Formula SHARE = Formula.of("s = m_F/m")
            .giving("front share", "%")
            .with("m_F", "front axle", "kg")
            .with("m", "mass of the car", "kg")
            .needs("m > 0*[kg]")
            .from(Source.STATICS.clause("ratio of two masses"))
            .build();

    @Override
    public String question() {
        return "What share of the mass stands on the front axle, before and after?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(car.received(), car.delivered())
                .map(scales -> Finding.unjudged(
                        scales.words(),
                        Working.fill(SHARE)
                                .put("m_F", scales.axle(Axle.FRONT))
                                .put("m", scales.total())
                                .work()));
    }
}
