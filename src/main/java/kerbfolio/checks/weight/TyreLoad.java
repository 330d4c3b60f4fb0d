package kerbfolio.checks.weight;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.car.Corner;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** A tyre knows nothing of plates; it carries the wheel it is on. */
public final class TyreLoad implements Check {
    @Override
    public String question() {
        return "Do the tyres carry what stands on them as delivered?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Stream<Finding> axles = Arrays.stream(Axle.values())
                .map(axle -> Finding.judged(
                        axle + ", as delivered",
                        TyreUse.of(car, axle, 2, car.delivered().axle(axle)),
                        limits,
                        "tyre-load"));
        Stream<Finding> corners = Arrays.stream(Corner.values())
                .filter(corner -> car.delivered().hasCorners())
                .map(corner -> Finding.judged(
                        corner + " wheel, as delivered",
                        TyreUse.of(car, corner.axle(), 1, car.delivered().corner(corner)),
                        limits,
                        "tyre-load"));
        return Stream.concat(axles, corners);
    }
}
