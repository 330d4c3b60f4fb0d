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
import kerbfolio.source.Source;

/** A monitor that trusts a wider voltage than the maker of the cell protects nothing. */
@Sheet(Sheets.BATTERY)
public final class CellVoltageLimits implements Check {
    static final Formula MARGIN = Formula.of("M = U_u - U_l")
            .giving("voltage the monitor stays inside the limit of the cell", "V")
            .with("U_u", "upper of the two limits", "V")
            .with("U_l", "lower of the two limits", "V")
            .from(Source.OWN_RULE.clause("monitor inside the limits of the cell"))
            .build();

    @Override
    public String question() {
        return "Do the voltage limits in force of the battery monitor lie inside those of the cell?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Settings.each(car, List.of(Watched.CELL_VOLTAGE_HIGH, Watched.CELL_VOLTAGE_LOW), (subject, setting) -> {
            Term inForce = setting.limit(car);
            boolean isHigh = setting.on() == Watched.CELL_VOLTAGE_HIGH;
            Term ofCell = ofCell(car, isHigh);
            return Finding.judged(
                    subject,
                    Working.fill(MARGIN)
                            .put("U_u", isHigh ? ofCell : inForce)
                            .put("U_l", isHigh ? inForce : ofCell)
                            .work(),
                    limits,
                    "cell-voltage-limits");
        });
    }

    private static Term ofCell(Car car, boolean isHigh) {
        Cell cell = car.pack().section().map(pack -> pack.cell()).orElse(null);
        return car.evidence()
                .stated(
                        "pack.cell." + (isHigh ? "max-voltage" : "min-voltage"),
                        (isHigh ? "highest" : "lowest") + " voltage of a cell",
                        "V",
                        cell == null ? null : isHigh ? cell.maxVoltage() : cell.minVoltage(),
                        cell == null ? null : cell.from());
    }
}
