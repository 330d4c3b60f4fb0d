package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Enclosure;
import kerbfolio.job.Gate;
import kerbfolio.job.LabelKind;
import kerbfolio.job.Part;
import kerbfolio.job.Place;
import kerbfolio.job.Role;

/** The next hand on the lid belongs to somebody who was not told. */
@Sheet(Sheets.TOUCH)
public final class WarningSymbol implements Check {
    @Override
    public String question() {
        return "Does every battery, and every case with live parts behind it, carry the warning symbol?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Finding> findings = Cases.exposed(car).stream()
                .filter(WarningSymbol::needsSymbol)
                .map(part -> Finding.judged(
                        part.id(), Marking.seen(car, part.id(), LabelKind.WARNING_SYMBOL), limits, "warning-symbol"))
                .toList();
        return Cases.orAsk(findings, "parts", "high-voltage parts", limits, "warning-symbol");
    }

    /** On a battery always; not on an inlet, nor where tools must take off other parts first, nor under the floor. */
    private static boolean needsSymbol(Part part) {
        Enclosure enclosure = part.enclosure();
        boolean isOutOfReach =
                enclosure != null && (Boolean.TRUE.equals(enclosure.hidden()) || enclosure.place() == Place.UNDERFLOOR);
        return part.role() == Role.BATTERY || (part.role() != Role.INLET && !isOutOfReach);
    }
}
