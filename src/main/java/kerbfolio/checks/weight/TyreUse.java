package kerbfolio.checks.weight;

import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Tyre;
import kerbfolio.job.Tyres;
import kerbfolio.job.Vehicle;
import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import kerbfolio.source.Table;
import org.jspecify.annotations.Nullable;

/** How much of what its tyres may carry an axle or a wheel uses. */
final class TyreUse {
    /** Up to 210 km/h the load index holds in full; above it the maker's figure at that speed is needed. */
    static final Formula USE = Formula.of("u = m/(n*Q)")
            .giving("use of the tyres", "%")
            .with("m", "mass carried", "kg")
            .with("n", "tyres that carry it", "1")
            .with("Q", "what one tyre may carry", "kg")
            .with("v", "top speed", "km/h")
            .needs("v <= 210*[km/h]")
            .from(Source.UN_R30.clause("section 2, load-capacity index"))
            .build();

    private TyreUse() {}

    static Working of(Car car, Axle axle, int tyres, Term mass) {
        return Working.fill(USE)
                .put("m", mass)
                .put("n", count(tyres))
                .put("Q", capacity(car, axle))
                .put("v", car.topSpeed())
                .work();
    }

    static @Nullable Tyre tyre(Car car, Axle axle) {
        Vehicle vehicle = car.job().vehicle();
        Tyres tyres = vehicle == null ? null : vehicle.tyres();
        return tyres == null ? null : axle == Axle.FRONT ? tyres.front() : tyres.rear();
    }

    /** The load marked on the sidewall, or what the load index stands for. */
    private static Term capacity(Car car, Axle axle) {
        Tyre tyre = tyre(car, axle);
        String path = "vehicle.tyres." + axle.key();
        if (tyre != null && tyre.maxLoad() != null) {
            return car.evidence()
                    .stated(path + ".max-load", "load marked on the tyre, " + axle, "kg", tyre.maxLoad(), "sidewall");
        }
        Quantity index = tyre == null ? null : tyre.loadIndex();
        return car.evidence()
                .tabled(
                        Table.of("tyre-load-index"),
                        path + ".load-index",
                        "load of one tyre, " + axle,
                        index == null ? null : Notation.plain(index.number()));
    }

    private static Term count(int tyres) {
        return Known.exact("", "tyres", Quantity.of(tyres, Unit.ONE), Basis.STATED, "one tyre a wheel");
    }
}
