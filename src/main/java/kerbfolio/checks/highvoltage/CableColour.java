package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.LabelKind;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import org.jspecify.annotations.Nullable;

/** Whoever cuts or drills a car knows one colour: what is orange is left alone. */
@Sheet(Sheets.TOUCH)
public final class CableColour implements Check {
    @Override
    public String question() {
        return "Is every high-voltage cable outside a case covered in orange?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Finding> findings = car.job().links().stream()
                .filter(link -> link.kind().isCable())
                .filter(link -> !isInsideOneCase(link, car))
                .map(link -> Finding.judged(link.id(), orange(link, car), limits, "cable-colour"))
                .toList();
        return Cases.orAsk(findings, "links", "high-voltage cables", limits, "cable-colour");
    }

    /** Another colour written down goes before a label that says orange; orange written down is seen by nobody. */
    private static Term orange(Link link, Car car) {
        String name = "orange cover on " + link.id();
        String path = "links[" + link.id() + "].colour";
        String colour = link.colour();
        boolean isOrange = colour != null && colour.toLowerCase(Locale.ROOT).contains("orange");
        if (colour != null && !isOrange) {
            return Evidence.observed(path, name + ", which is " + colour, false, null, null);
        }
        Term seen = Marking.seen(car, link.id(), LabelKind.ORANGE_COVER);
        return seen.amount().isEmpty() && isOrange ? Evidence.observed(path, name, true, null, null) : seen;
    }

    private static boolean isInsideOneCase(Link link, Car car) {
        String from = housing(link.from(), car);
        return from != null && from.equals(housing(link.to(), car));
    }

    /** The part whose case an end lies in: the part it is inside, or the part itself. */
    private static @Nullable String housing(@Nullable String end, Car car) {
        if (end == null) {
            return null;
        }
        String id = end.contains("/") ? end.substring(0, end.lastIndexOf('/')) : end;
        return car.job().parts().stream()
                .filter(part -> part.id().equals(id) && Cases.isEnclosed(part, car))
                .findFirst()
                .map(Part::inside)
                .orElse(id);
    }
}
