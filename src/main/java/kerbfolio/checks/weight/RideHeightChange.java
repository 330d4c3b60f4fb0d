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

/** A car that sits lower has less ground clearance and other steering. */
public final class RideHeightChange implements Check {
    static final Formula CHANGE = Formula.of("Delta_z = z_1 - z_0")
            .giving("change of ride height", "mm")
            .with("z_1", "as delivered", "mm")
            .with("z_0", "as received", "mm")
            .from(Source.STATICS.clause("difference of two heights"))
            .build();

    @Override
    public String question() {
        return "By how much did the ride height change?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values()).map(axle -> {
            var suspension = car.suspension(axle);
            return Finding.unjudged(
                    axle.toString(),
                    Working.fill(CHANGE)
                            .put("z_1", suspension.heightAfter())
                            .put("z_0", suspension.heightBefore())
                            .work());
        });
    }
}
