package kerbfolio.checks.highvoltage;

import java.util.List;
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

/** A fuse that runs hot every day blows on the day it should not. */
@Sheet(Sheets.CABLES)
public final class FuseContinuous implements Check {
    static final Formula USE = Formula.of("u = sum(I)/(n*I_f)")
            .giving("use of what the fuse carries without end", "%")
            .each("I", "current of each consumer it feeds", "A")
            .with("n", "strings that share it", "1")
            .with("I_f", "current the fuse carries without end", "A")
            .needs("n*I_f > 0*[A]")
            .from(Source.CIRCUITS.clause("currents in parallel"))
            .build();

    @Override
    public String question() {
        return "Does every fuse carry what it feeds without end?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Loop drive = Loop.ofDrives(car);
        return Subjects.parts(
                "fuses",
                car.circuit().parts(Role.FUSE),
                limits,
                "fuse-continuous",
                fuse -> Working.fill(USE)
                        .each("I", fed(car, drive, fuse))
                        .put("n", drive.sharing(fuse.id()))
                        .put("I_f", car.fuse(fuse).continuousCurrent())
                        .work());
    }

    /** The pack's own current where the drive hangs on it; else that of every consumer behind it. */
    private static List<Term> fed(Car car, Loop drive, Part fuse) {
        if (drive.has(fuse.id())) {
            return List.of(Duty.DRIVE_CONTINUOUS.current(car));
        }
        List<Term> fed = car.circuit().parts().stream()
                .filter(part -> part.role() != Role.BATTERY && part.role() != Role.JUNCTION_BOX)
                .filter(part -> car.circuit().loop(part).contains(fuse.id()))
                .map(part -> current(car, part))
                .toList();
        return fed.isEmpty()
                ? List.of(new Absent("links", "what " + fuse.title() + " feeds", Unit.of("A"), "no loop passes it"))
                : fed;
    }

    /** Of its data sheet; what charges the pack and states none takes what the pack is charged with. */
    private static Term current(Car car, Part part) {
        Term stated = car.nameplate(part).continuousCurrent();
        boolean charges = part.role() == Role.CHARGER || part.role() == Role.INLET;
        return charges && stated.amount().isEmpty() ? Duty.CHARGE.current(car) : stated;
    }
}
