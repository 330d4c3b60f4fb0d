package kerbfolio.checks.weight;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** Luggage behind the axle takes weight off the front and puts more than its own on the rear. */
public final class LadenAxleMargin implements Check {
    @Override
    public String question() {
        return "Is each axle with the load its owner declares within its permitted mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values())
                .map(axle -> Finding.judged(
                        axle + ", with the declared load",
                        Margin.of(car.rating(axle), car.laden().axle(axle)),
                        limits,
                        "axle-margin"));
    }
}
