package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Cell;
import kerbfolio.job.Gate;
import kerbfolio.job.Watched;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** A cell charged cold or used hot is damaged before anybody sees it. */
@Sheet(Sheets.BATTERY)
public final class CellTemperatureLimits implements Check {
    static final Formula MARGIN = Formula.of("M = T_u - T_l")
            .giving("temperature the monitor stays inside the limit of the cell", "K")
            .with("T_u", "upper of the two limits", "°C")
            .with("T_l", "lower of the two limits", "°C")
            .from(Source.OWN_RULE.clause("monitor inside the limits of the cell"))
            .build();

    private static final List<Watched> TEMPERATURES = List.of(
            Watched.TEMPERATURE_HIGH,
            Watched.TEMPERATURE_LOW,
            Watched.CHARGE_TEMPERATURE_HIGH,
            Watched.CHARGE_TEMPERATURE_LOW);

    @Override
    public String question() {
        return "Do the temperature limits in force of the battery monitor lie inside those of the cell?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Settings.each(car, TEMPERATURES, (subject, setting) -> {
            Watched on = setting.on();
            Term inForce = setting.limit(car);
            boolean isHigh = on == Watched.TEMPERATURE_HIGH || on == Watched.CHARGE_TEMPERATURE_HIGH;
            Cell cell = car.pack().section().map(pack -> pack.cell()).orElse(null);
            Term ofCell = car.evidence()
                    .stated(
                            "pack.cell." + key(on),
                            "limit of a cell, " + on,
                            "°C",
                            cell == null ? null : figure(cell, on),
                            cell == null ? null : cell.from());
            return Finding.judged(
                    subject,
                    Working.fill(MARGIN)
                            .put("T_u", isHigh ? ofCell : inForce)
                            .put("T_l", isHigh ? inForce : ofCell)
                            .work(),
                    limits,
                    "cell-temperature-limits");
        });
    }

    private static String key(Watched on) {
        return switch (on) {
            case TEMPERATURE_HIGH -> "max-temperature";
            case TEMPERATURE_LOW -> "min-temperature";
            case CHARGE_TEMPERATURE_HIGH -> "max-charge-temperature";
            default -> "min-charge-temperature";
        };
    }

    private static @Nullable Quantity figure(Cell cell, Watched on) {
        return switch (on) {
            case TEMPERATURE_HIGH -> cell.maxTemperature();
            case TEMPERATURE_LOW -> cell.minTemperature();
            case CHARGE_TEMPERATURE_HIGH -> cell.maxChargeTemperature();
            default -> cell.minChargeTemperature();
        };
    }
}
