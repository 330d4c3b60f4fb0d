package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Gate;

/** A cable that is thick enough on a bench is too thin beside a hot motor. */
@Sheet(Sheets.CABLES)
public final class CableAmpacity implements Check {
    @Override
    public String question() {
        return "Does every cable, laid by itself, carry the current of the drive where it is hottest?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Loop drive = Loop.ofDrives(car);
        return Subjects.cables(
                "cables of the drive",
                Subjects.cables(car).stream()
                        .filter(cable -> drive.has(cable.id()))
                        .toList(),
                limits,
                "cable-ampacity",
                cable -> CurrentUse.of(
                        cable.id(),
                        Duty.DRIVE_CONTINUOUS.current(car),
                        drive.sharing(cable.id()),
                        car.conductor(cable).ampacity()));
    }
}
