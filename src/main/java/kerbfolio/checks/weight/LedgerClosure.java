package kerbfolio.checks.weight;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Unit;

/** A part nobody wrote down shows here, and so does one written in the wrong place. */
public final class LedgerClosure implements Check {
    @Override
    public String question() {
        return "Does the ledger of parts agree with the scales, in total and on each axle?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.concat(
                Stream.of(finding(
                        "whole car", car, limits, car.change(), car.ledger().change())),
                Arrays.stream(Axle.values())
                        .map(axle -> finding(
                                axle.toString(),
                                car,
                                limits,
                                car.change(axle),
                                car.ledger().change(axle))));
    }

    private static Finding finding(String subject, Car car, Limits limits, Term scales, Term ledger) {
        String obstacle = obstacle(car);
        Term result = obstacle.isEmpty()
                ? Agreement.of(subject, scales, ledger)
                : new Absent("weighings.as-received", "closure", Unit.ONE, obstacle);
        return Finding.judged(subject, result, limits, "ledger-closure");
    }

    /** Why two weighings cannot be compared; empty if they can. */
    static String obstacle(Car car) {
        if (car.received().isStated() || car.delivered().isStated()) {
            return "published masses are not weighed on this car";
        }
        if (car.received().total().amount().isEmpty()
                || car.delivered().total().amount().isEmpty()) {
            return "";
        }
        if (car.received().aboard().isEmpty() || car.delivered().aboard().isEmpty()) {
            return "who and what was aboard at the weighings is not recorded";
        }
        if (!car.received().aboard().equals(car.delivered().aboard())) {
            return "the two weighings had different things aboard";
        }
        return "";
    }
}
