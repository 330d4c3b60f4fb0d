package kerbfolio.checks.weight;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Tyre;
import kerbfolio.source.Source;
import kerbfolio.source.Table;

/** A motor can be faster than the engine it replaced. */
public final class TyreSpeed implements Check {
    static final Formula MARGIN = Formula.of("M = v_T - v")
            .giving("speed in hand", "km/h")
            .with("v_T", "speed the tyre is made for", "km/h")
            .with("v", "top speed", "km/h")
            .from(Source.UN_R30.clause("section 2, speed category symbol"))
            .build();

    @Override
    public String question() {
        return "Are the tyres made for the top speed of the car?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Arrays.stream(Axle.values()).map(axle -> {
            Tyre tyre = TyreUse.tyre(car, axle);
            Working margin = Working.fill(MARGIN)
                    .put(
                            "v_T",
                            car.evidence()
                                    .tabled(
                                            Table.of("tyre-speed-symbol"),
                                            "vehicle.tyres." + axle.key() + ".speed-symbol",
                                            "speed of the tyre, " + axle,
                                            tyre == null ? null : tyre.speedSymbol()))
                    .put("v", car.topSpeed())
                    .work();
            return Finding.judged(axle.toString(), margin, limits, "tyre-speed");
        });
    }
}
