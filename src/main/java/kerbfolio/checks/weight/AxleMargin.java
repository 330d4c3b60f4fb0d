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

/** A total within its plate can hide an axle that is not. */
public final class AxleMargin implements Check {
    @Override
    public String question() {
        return "Is each axle as delivered within its permitted mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values())
                .map(axle -> Finding.judged(
                        axle + ", as delivered",
                        Margin.of(car.rating(axle), car.delivered().axle(axle)),
                        limits,
                        "axle-margin"));
    }
}
