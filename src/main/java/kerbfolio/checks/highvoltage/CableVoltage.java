package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Gate;
import kerbfolio.job.LinkKind;

/** Insulation that is made for less than the full pack fails where nobody looks. */
@Sheet(Sheets.CABLES)
public final class CableVoltage implements Check {
    @Override
    public String question() {
        return "Is every cable rated for the highest voltage of the pack?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Subjects.cables(
                "cables",
                car.job().links().stream()
                        .filter(link -> link.kind() == LinkKind.HIGH_VOLTAGE || link.kind() == LinkKind.PHASE)
                        .toList(),
                limits,
                "cable-voltage",
                cable -> VoltageUse.of(car, car.conductor(cable).voltage()));
    }
}
