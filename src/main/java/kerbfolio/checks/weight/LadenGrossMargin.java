package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** The car is bought to carry something. */
public final class LadenGrossMargin implements Check {
    @Override
    public String question() {
        return "Is the car with the load its owner declares within its permitted gross mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(Finding.judged(
                "with the declared load",
                Margin.of(car.grossRating(), car.laden().total()),
                limits,
                "gross-margin"));
    }
}
