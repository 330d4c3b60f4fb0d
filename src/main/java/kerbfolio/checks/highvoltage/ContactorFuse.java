package kerbfolio.checks.highvoltage;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/** A current too large for the contactor and too small for the fuse is broken by neither. */
@Sheet(Sheets.CABLES)
public final class ContactorFuse implements Check {
    static final Formula USE = Formula.of("u = n*I_min/I_b")
            .giving("least current the fuse breaks over what the contactor opens", "%")
            .with("n", "strings that share the current of the contactor", "1")
            .with("I_min", "least breaking current of the fuse", "A")
            .with("I_b", "breaking current of the contactor", "A")
            .needs("I_b > 0*[A]")
            .from(Source.CIRCUITS.clause("currents in parallel"))
            .build();

    @Override
    public String question() {
        return "Does every contactor open what the fuse behind it does not yet break?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Map<Part, Loop> loops = Loop.ofContactors(car);
        return Subjects.parts(
                "contactors of drive and charge",
                List.copyOf(loops.keySet()),
                limits,
                "contactor-fuse",
                contactor -> use(car, Objects.requireNonNull(loops.get(contactor)), contactor));
    }

    private static Working use(Car car, Loop loop, Part contactor) {
        List<Working> uses = loop.parts(Role.FUSE).stream()
                .map(fuse -> use(
                        car,
                        contactor,
                        car.guards().isOfOneString(contactor.id())
                                ? Loop.whole("contactor and fuse lie in one string")
                                : loop.sharing(fuse.id()),
                        car.fuse(fuse).minimumBreaking()))
                .toList();
        Comparator<Working> least = Comparator.comparingDouble(
                use -> use.amount().map(amount -> amount.si()).orElse(Double.MAX_VALUE));
        return uses.stream()
                .min(least)
                .orElseGet(() -> use(
                        car,
                        contactor,
                        loop.sharing(contactor.id()),
                        new Absent("parts", "fuse in its loop", Unit.of("A"), "no fuse lies in its loop")));
    }

    private static Working use(Car car, Part contactor, Term sharing, Term least) {
        return Working.fill(USE)
                .put("n", sharing)
                .put("I_min", least)
                .put("I_b", car.contactor(contactor).breakingCurrent())
                .work();
    }
}
