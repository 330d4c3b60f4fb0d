package kerbfolio.checks.weight;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.car.Scales;
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
        Term result = obstacle(car, "closure", Unit.ONE).orElseGet(() -> Agreement.of(subject, scales, ledger));
        return Finding.judged(subject, result, limits, "ledger-closure");
    }

    /** Why two weighings cannot be compared, in place of a figure; nothing if they can. */
    static Optional<Term> obstacle(Car car, String name, Unit unit) {
        Scales received = car.received();
        Scales delivered = car.delivered();
        if (received.isStated() || delivered.isStated()) {
            return absent("weighings.as-received", name, unit, "published masses are not weighed on this car");
        }
        if (received.total().amount().isEmpty() || delivered.total().amount().isEmpty()) {
            return Optional.empty();
        }
        if (received.aboard().isEmpty() || delivered.aboard().isEmpty()) {
            String path = received.aboard().isEmpty() ? "weighings.as-received.state" : "weighings.as-delivered.state";
            return absent(path, name, unit, "who and what was aboard at the weighings is not recorded");
        }
        return received.aboard().equals(delivered.aboard())
                ? Optional.empty()
                : absent("weighings.as-delivered", name, unit, "the two weighings had different things aboard");
    }

    private static Optional<Term> absent(String path, String name, Unit unit, String why) {
        return Optional.of(new Absent(path, name, unit, why));
    }
}
