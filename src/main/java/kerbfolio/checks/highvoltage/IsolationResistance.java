package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Gate;

/** One leak is silent; the second one goes through whoever finds it. */
@Sheet(Sheets.TOUCH)
public final class IsolationResistance implements Check {
    @Override
    public String question() {
        return "Is the high-voltage circuit isolated from the chassis?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public boolean isWaivable() {
        return false;
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Finding> findings = Isolation.of(car, limits).stream()
                .map(isolation -> isolation.finding(car, limits))
                .toList();
        return Cases.orAsk(
                findings, "readings.isolation", "isolation of the circuit", limits, Isolation.WITH_ALTERNATING);
    }
}
