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

/** Tyres are chosen for the loaded car and for what the plate permits. */
public final class LadenTyreLoad implements Check {
    @Override
    public String question() {
        return "Do the tyres carry each axle with the declared load, and at its permitted mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values())
                .flatMap(axle -> Stream.of(
                        Finding.judged(
                                axle + ", with the declared load",
                                TyreUse.of(car, axle, 2, car.laden().axle(axle)),
                                limits,
                                "tyre-load"),
                        Finding.judged(
                                axle + ", at its permitted mass",
                                TyreUse.of(car, axle, 2, car.rating(axle)),
                                limits,
                                "tyre-load")));
    }
}
