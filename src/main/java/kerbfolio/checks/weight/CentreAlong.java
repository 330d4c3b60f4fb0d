package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** The centre of gravity is what every brake, lift and tie-down works against. */
public final class CentreAlong implements Check {
    @Override
    public String question() {
        return "Where along the car is its centre of gravity, before and after?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(
                Finding.unjudged(car.received().words(), car.centreAlongReceived()),
                Finding.unjudged(car.delivered().words(), car.centre().along()));
    }
}
