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

/** Until the fuse has melted, the cable takes the whole short circuit. */
@Sheet(Sheets.CABLES)
public final class FaultWithstand implements Check {
    static final Formula STRING_CURRENT = Formula.of("I_f = I_p/n")
            .giving("short-circuit current through one fuse", "A")
            .with("I_p", "prospective short-circuit current", "kA")
            .with("n", "ways current comes to the cable", "1")
            .from(Source.CIRCUITS.clause("currents in parallel"))
            .build();

    static final Formula USE = Formula.of("u = I_p*sqrt(t)/(k*S)")
            .giving("cross-section a short circuit needs over that of the cable", "%")
            .with("I_p", "prospective short-circuit current", "kA")
            .with("t", "time until the fuse has melted", "s")
            .with("k", "short-circuit factor of the conductor", "A·s^0.5/mm²")
            .with("S", "cross-section of the conductor", "mm²")
            .needs("t <= 5*[s]")
            .needs("k*S > 0*[A·s^0.5]")
            .from(Source.IEC_60364_5_54.clause("adiabatic heating, at most 5 s"))
            .build();

    @Override
    public String question() {
        return "Does every cable survive the largest short circuit until its fuse has melted?";
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
                "fault-withstand",
                cable -> Guarded.worst(car, cable, guard -> use(car, guard)));
    }

    private static Working use(Car car, Guard guard) {
        Conductor conductor = car.conductor(guard.link());
        Working through = Working.fill(STRING_CURRENT)
                .put("I_p", car.prospectiveCurrent())
                .put("n", Guarded.ways(guard))
                .work();
        return Working.fill(USE)
                .put("I_p", car.prospectiveCurrent())
                .put(
                        "t",
                        Guarded.largest(
                                Guarded.least(guard, "s", fuse -> car.fuse(fuse).meltingTime(through))))
                .put("k", conductor.withstand())
                .put("S", conductor.area())
                .work();
    }
}
