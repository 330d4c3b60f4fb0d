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

/** Springs set by eye show in the diagonal before they show on the road. */
public final class CrossWeight implements Check {
    static final Formula CROSS = Formula.of("c = (m_RF + m_LR)/m")
            .giving("cross weight, right front with left rear", "%")
            .with("m_RF", "right front wheel", "kg")
            .with("m_LR", "left rear wheel", "kg")
            .with("m", "mass of the car", "kg")
            .needs("m > 0*[kg]")
            .from(Source.STATICS.clause("ratio of two masses"))
            .build();

    @Override
    public String question() {
        return "How is the mass shared between the diagonals, before and after?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(car.received(), car.delivered())
                .map(scales -> Finding.unjudged(
                        "right front and left rear, " + scales.words(),
                        Working.fill(CROSS)
                                .put("m_RF", scales.corner(Corner.RIGHT_FRONT))
                                .put("m_LR", scales.corner(Corner.LEFT_REAR))
                                .put("m", scales.total())
                                .work()));
    }
}
