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

/** More mass on the same spring floats; less jars. */
public final class RideFrequency implements Check {
    static final Formula FREQUENCY = Formula.of("f = sqrt(2*k/(m - 2*m_u))/(2*pi)")
            .giving("ride frequency", "Hz")
            .with("k", "rate between body and ground at one wheel", "N/mm")
            .with("m", "axle mass", "kg")
            .with("m_u", "unsprung mass of one wheel", "kg")
            .constant("pi", Math.PI, "1", Source.DYNAMICS.clause("circle constant"))
            .needs("m > 2*m_u")
            .needs("k > 0*[N/mm]")
            .from(Source.DYNAMICS.clause("natural frequency, undamped"))
            .build();

    @Override
    public String question() {
        return "At what frequency does the body ride on each axle, before and after?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values())
                .flatMap(axle -> Stream.of(car.received(), car.delivered())
                        .map(scales -> Finding.unjudged(
                                axle + ", " + scales.words(),
                                Working.fill(FREQUENCY)
                                        .put("m", scales.axle(axle))
                                        .put("m_u", car.suspension(axle).unsprungMass())
                                        .put("k", car.suspension(axle).rate())
                                        .work())));
    }
}
