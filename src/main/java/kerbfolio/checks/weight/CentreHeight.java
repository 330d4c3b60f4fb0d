package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** Height cannot be seen on level scales; it takes an axle raised. */
public final class CentreHeight implements Check {
    @Override
    public String question() {
        return "How high is the centre of gravity?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var lifts = car.centre().lifts();
        return Stream.concat(
                IntStream.range(0, lifts.size()).mapToObj(i -> Finding.unjudged("lift " + (i + 1), lifts.get(i))),
                Stream.of(Finding.unjudged("mean of the lifts", car.centre().height())));
    }
}
