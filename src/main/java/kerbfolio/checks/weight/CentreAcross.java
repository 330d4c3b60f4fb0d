package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** Half a battery on one side is a lean nobody ordered. */
public final class CentreAcross implements Check {
    @Override
    public String question() {
        return "Where across the car is its centre of gravity?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(Finding.unjudged(car.delivered().words(), car.centre().across()));
    }
}
