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
import kerbfolio.job.Gate;
import kerbfolio.job.Link;
import kerbfolio.source.Source;

/** A fuse larger than its cable guards the fuse box and burns the car. */
@Sheet(Sheets.CABLES)
public final class FuseGuardsCable implements Check {
    static final Formula USE = Formula.of("u = sum(I_n)/I_c")
            .giving("rating of the fuses over what the cable carries", "%")
            .each("I_n", "rated current of the fuse on each way to the cable", "A")
            .with("I_c", "current the cable carries without end where it runs", "A")
            .needs("I_c > 0*[A]")
            .from(Source.IEC_60287.clause("permissible current of the cable behind the fuse"))
            .build();

    @Override
    public String question() {
        return "Does the fuse before every cable open before the cable is too hot?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Subjects.cables("cables", Subjects.cables(car), limits, "fuse-guards-cable", cable -> use(car, cable));
    }

    private static Term use(Car car, Link cable) {
        return Guarded.worst(
                car,
                cable,
                guard -> Working.fill(USE)
                        .each(
                                "I_n",
                                Guarded.least(guard, "A", fuse -> car.fuse(fuse).current()))
                        .put("I_c", car.conductor(cable).ampacity())
                        .work());
    }
}
