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

/** A monitor that only warns of an empty or a hot cell leaves it to the driver. */
@Sheet(Sheets.BATTERY)
public final class MonitorActions implements Check {
    @Override
    public String question() {
        return "Does the battery monitor stop the drive when a cell is empty or hot?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Settings.acted(
                car,
                List.of(Watched.CELL_VOLTAGE_LOW, Watched.TEMPERATURE_HIGH),
                Set.of(Action.STOP_DRIVE, Action.OPEN_CONTACTORS),
                limits);
    }
}
