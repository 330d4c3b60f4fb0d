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

/** Charged below its lowest temperature a cell grows metal inside. */
@Sheet(Sheets.BATTERY)
public final class ColdCharge implements Check {
    @Override
    public String question() {
        return "Does the battery monitor block the charge of a cold or a hot cell?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Settings.acted(
                car,
                List.of(Watched.CHARGE_TEMPERATURE_LOW, Watched.CHARGE_TEMPERATURE_HIGH),
                Set.of(Action.STOP_CHARGE, Action.OPEN_CONTACTORS),
                limits);
    }
}
