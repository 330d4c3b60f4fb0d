package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.car.Guards.Guard;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.job.Gate;
import kerbfolio.job.Link;
import kerbfolio.quantity.Unit;

/** A cable that a box of cells feeds without a fuse between them is a heater as long as the car. */
@Sheet(Sheets.CABLES)
public final class CableProtection implements Check {
    private static final String KEY = "cable-protection";

    @Override
    public String question() {
        return "Is every cable guarded by a fuse from each end that is fed?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Stream<Finding> ends = Subjects.cables(car).stream().flatMap(cable -> ends(car, cable, limits));
        return Subjects.cables(car).isEmpty() ? Stream.of(Subjects.unrecorded("cables", "links", limits, KEY)) : ends;
    }

    private static Stream<Finding> ends(Car car, Link cable, Limits limits) {
        List<Guard> guards = car.guards().of(cable);
        String path = "links[" + cable.id() + "]";
        if (guards.isEmpty()) {
            var unfed = new Absent(
                    path, "what feeds " + cable.id(), Unit.ONE, "no box of cells feeds it by the links recorded");
            return Stream.of(Finding.judged(cable.id(), unfed, limits, KEY));
        }
        return guards.stream()
                .map(guard -> Finding.judged(
                        cable.id() + " at " + guard.end(),
                        Evidence.solved(
                                path,
                                "fuses before " + cable.id() + " at " + guard.end(),
                                guard.fuses().size(),
                                "1",
                                words(guard)),
                        limits,
                        KEY));
    }

    private static String words(Guard guard) {
        return guard.fuses().isEmpty()
                ? "some current comes there from a box of cells without a fuse"
                : "guarded by " + Guarded.names(guard.fuses());
    }
}
