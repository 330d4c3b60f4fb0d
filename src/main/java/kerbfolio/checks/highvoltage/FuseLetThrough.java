package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Conductor;
import kerbfolio.car.Guards.Guard;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** What a fuse lets through before it is open, the cable behind it has to swallow. */
@Sheet(Sheets.CABLES)
public final class FuseLetThrough implements Check {
    static final Formula USE = Formula.of("u = n^2*W/(k*S)^2")
            .giving("let-through over what the cable withstands", "%")
            .with("n", "ways current comes to the cable", "1")
            .with("W", "let-through of a fuse", "A²·s")
            .with("k", "short-circuit factor of the conductor", "A·s^0.5/mm²")
            .with("S", "cross-section of the conductor", "mm²")
            .needs("k*S > 0*[A·s^0.5]")
            .from(Source.IEC_60364_5_54.clause("adiabatic heating"))
            .build();

    @Override
    public String question() {
        return "Does every cable survive what its fuse lets through?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Subjects.cables(
                "cables",
                Subjects.cables(car),
                limits,
                "fuse-let-through",
                cable -> Guarded.worst(car, cable, guard -> use(car, guard)));
    }

    /** Fuses of strings in parallel let their currents through together, and the heat goes with the square of the sum. */
    private static Working use(Car car, Guard guard) {
        Conductor conductor = car.conductor(guard.link());
        return Working.fill(USE)
                .put("n", Guarded.ways(guard))
                .put(
                        "W",
                        Guarded.largest(Guarded.least(
                                guard, "A²·s", fuse -> car.fuse(fuse).letThrough())))
                .put("k", conductor.withstand())
                .put("S", conductor.area())
                .work();
    }
}
