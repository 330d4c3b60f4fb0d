package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Action;
import kerbfolio.job.Gate;
import kerbfolio.job.Watched;

/** A full cell that goes on being charged burns; nobody may wave this through. */
@Sheet(Sheets.BATTERY)
public final class ChargeStop implements Check {
    @Override
    public String question() {
        return "Does the battery monitor stop the charge when a cell is full?";
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
        return Settings.acted(
                car, List.of(Watched.CELL_VOLTAGE_HIGH), Set.of(Action.STOP_CHARGE, Action.OPEN_CONTACTORS), limits);
    }
}
