package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Conductor;
import kerbfolio.car.Guards.Guard;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
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

    static final Formula TOGETHER = Formula.of("I_p = n*I_f")
            .giving("short-circuit current at a point of the curve", "A")
            .with("n", "ways current comes to the cable", "1")
            .with("I_f", "current through one fuse", "A")
            .from(Source.CIRCUITS.clause("currents in parallel"))
            .build();

    /** Beyond it the heat no longer stays in the conductor, and the formula no longer holds. */
    private static final Term FIVE_SECONDS = Known.exact(
            "",
            "longest time of the formula",
            Quantity.of(5, Unit.of("s")),
            Basis.REQUIRED,
            Source.IEC_60364_5_54.clause("adiabatic heating, at most 5 s").toString());

    @Override
    public String question() {
        return "Does every cable survive a short circuit, large or small, until its fuse has melted?";
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

    /** A smaller current melts the fuse so much later that it may heat the cable more: each point of a curve is tried. */
    private static Term use(Car car, Guard guard) {
        Working through = Working.fill(STRING_CURRENT)
                .put("I_p", car.prospectiveCurrent())
                .put("n", Guarded.ways(guard))
                .work();
        double largest = through.amount().map(amount -> amount.si()).orElse(0.0);
        var found = new ArrayList<Term>();
        found.add(use(car, guard, car.prospectiveCurrent(), through));
        guard.fuses().stream()
                .flatMap(fuse -> car.fuse(fuse).markedCurrents(FIVE_SECONDS).stream())
                .filter(point ->
                        point.amount().filter(amount -> amount.si() < largest).isPresent())
                .forEach(point -> found.add(use(
                        car,
                        guard,
                        Working.fill(TOGETHER)
                                .put("I_f", point)
                                .put("n", Guarded.ways(guard))
                                .work(),
                        point)));
        return found.get(0).amount().isPresent()
                ? Subjects.worst(
                        found.stream().filter(term -> term.amount().isPresent()).toList())
                : found.get(0);
    }

    private static Working use(Car car, Guard guard, Term current, Term through) {
        Conductor conductor = car.conductor(guard.link());
        return Working.fill(USE)
                .put("I_p", current)
                .put(
                        "t",
                        Guarded.largest(
                                Guarded.least(guard, "s", fuse -> car.fuse(fuse).meltingTime(through))))
                .put("k", conductor.withstand())
                .put("S", conductor.area())
                .work();
    }
}
