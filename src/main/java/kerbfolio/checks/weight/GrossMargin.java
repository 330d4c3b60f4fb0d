package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** A plate that is overrun by the empty car leaves nobody a seat. */
public final class GrossMargin implements Check {
    @Override
    public String question() {
        return "Is the car as delivered within its permitted gross mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(Finding.judged(
                "as delivered", Margin.of(car.grossRating(), car.delivered().total()), limits, "gross-margin"));
    }
}
