package kerbfolio.checks.highvoltage;

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
import kerbfolio.job.CellReading;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** Cell groups that drift apart show a weak cell or a joint, and cost range. */
@Sheet(Sheets.BATTERY)
public final class CellSpread implements Check {
    static final Formula SPREAD = Formula.of("Delta_U = U_h - U_l")
            .giving("spread of the cell groups", "mV")
            .with("U_h", "highest cell group", "V")
            .with("U_l", "lowest cell group", "V")
            .needs("U_h >= U_l")
            .from(Source.OWN_RULE.clause("spread at handover"))
            .build();

    @Override
    public String question() {
        return "How far are the cell groups apart at handover?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        CellReading cells =
                car.job().readings() == null ? null : car.job().readings().cells();
        Working spread = Working.fill(SPREAD)
                .put("U_h", reading(car, "highest", cells, cells == null ? null : cells.highest()))
                .put("U_l", reading(car, "lowest", cells, cells == null ? null : cells.lowest()))
                .work();
        return Stream.of(Finding.judged("cell groups", spread, limits, "cell-spread"));
    }

    private static Term reading(Car car, String key, @Nullable CellReading cells, @Nullable Quantity voltage) {
        return car.evidence()
                .measured(
                        "readings.cells." + key,
                        key + " cell group",
                        "V",
                        voltage,
                        cells == null ? null : cells.instrument(),
                        cells == null ? null : cells.date());
    }
}
