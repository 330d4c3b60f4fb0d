package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Gate;
import kerbfolio.job.Role;

/** A fuse that cannot put out its own arc is a piece of burning wire. */
@Sheet(Sheets.CABLES)
public final class FuseVoltage implements Check {
    @Override
    public String question() {
        return "Does every fuse break the highest direct voltage of the pack?";
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
        return Subjects.parts(
                "fuses",
                car.circuit().parts(Role.FUSE),
                limits,
                "fuse-voltage",
                fuse -> VoltageUse.of(car, car.fuse(fuse).dcVoltage()));
    }
}
