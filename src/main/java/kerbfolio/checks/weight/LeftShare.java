package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Corner;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** A car that leans on one side wears and stops on that side. */
public final class LeftShare implements Check {
    static final Formula SHARE = Formula.of("s = (m_LF + m_LR)/m")
            .giving("left share", "%")
            .with("m_LF", "left front wheel", "kg")
            .with("m_LR", "left rear wheel", "kg")
            .with("m", "mass of the car", "kg")
            .needs("m > 0*[kg]")
            .from(Source.STATICS.clause("ratio of two masses"))
            .build();

    @Override
    public String question() {
        return "What share of the mass stands on the left wheels, before and after?";
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
                                .put("m_LF", scales.corner(Corner.LEFT_FRONT))
                                .put("m_LR", scales.corner(Corner.LEFT_REAR))
                                .put("m", scales.total())
                                .work()));
    }
}
