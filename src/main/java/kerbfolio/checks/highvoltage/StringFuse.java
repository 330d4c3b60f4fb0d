package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;

/** Strings in parallel feed each other's faults, and half a split pack is still a pack. */
@Sheet(Sheets.CABLES)
public final class StringFuse implements Check {
    private static final String KEY = "string-fuse";

    @Override
    public String question() {
        return "Has every box of cells a fuse of its own?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Map<Part, Set<Part>> own = car.guards().ownFuses();
        return Subjects.parts(
                "boxes of cells",
                List.copyOf(own.keySet()),
                limits,
                KEY,
                box -> count(car, box, own.getOrDefault(box, Set.of())));
    }

    private static Term count(Car car, Part box, Set<Part> fuses) {
        String name = "fuses of " + box.title() + " alone";
        return car.circuit().isRecorded()
                ? Evidence.solved(
                        "links", name, fuses.size(), "1", fuses.isEmpty() ? "none" : Guarded.names(List.copyOf(fuses)))
                : Absent.unrecorded("links", "what joins what", "1");
    }
}
