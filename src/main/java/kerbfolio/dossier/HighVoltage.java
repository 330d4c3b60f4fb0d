package kerbfolio.dossier;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Guards;
import kerbfolio.car.TractionPack;
import kerbfolio.check.Examination;
import kerbfolio.formula.Term;
import kerbfolio.job.Enclosure;
import kerbfolio.job.Fuse;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * What the inspector looks for on the traction circuit.
 *
 * @param links how many links the circuit was derived from
 * @param facts voltages and energy of the pack
 * @param checklist what is asked of each part and cable, and what the record shows of it
 * @param isolation measurements of isolation
 * @param cables cables of the circuit, and those for alternating current
 * @param fuses fuses of the circuit
 */
public record HighVoltage(
        int links,
        List<Fact> facts,
        Checklist checklist,
        List<IsolationLine> isolation,
        List<CableLine> cables,
        List<FuseLine> fuses) {

    /** A cable as it was recorded, with what guards it. */
    public record CableLine(
            String id,
            String way,
            String size,
            String length,
            String rated,
            String ampacity,
            String ambient,
            String guards,
            String colour,
            String place) {}

    /** A fuse as its data sheet states it, with what it guards. */
    public record FuseLine(
            String id,
            String name,
            String where,
            String current,
            String voltage,
            String breaks,
            String letThrough,
            String guards) {}

    /** Whether there is anything to print. */
    public boolean isRecorded() {
        return !facts.isEmpty() || !cables.isEmpty() || !checklist.subjects().isEmpty();
    }

    static HighVoltage of(Car car, List<Examination> examinations, UnitSystem system) {
        Circuit circuit = car.circuit();
        return new HighVoltage(
                circuit.links().size(),
                facts(car.pack(), system),
                Checklist.of(car.job(), examinations, system),
                IsolationLine.all(car.job(), examinations, system),
                car.job().links().stream()
                        .filter(link -> link.kind().isCable())
                        .map(link -> cable(link, car.guards()))
                        .toList(),
                circuit.parts(Role.FUSE).stream().map(part -> fuse(part, car)).toList());
    }

    private static List<Fact> facts(TractionPack pack, UnitSystem system) {
        return Stream.<Term>of(
                        pack.highestVoltage(),
                        pack.nominalVoltage(),
                        pack.lowestVoltage(),
                        pack.capacity(),
                        pack.energy(),
                        pack.resistance())
                .map(term -> Fact.of(term.name(), term, system))
                .filter(fact -> fact.value().isKnown())
                .toList();
    }

    private static CableLine cable(Link link, Guards guards) {
        return new CableLine(
                link.id(),
                Head.or(link.from()) + " to " + Head.or(link.to()),
                Head.or(link.size()),
                Head.or(link.length()),
                and(link.voltage(), link.maxTemperature()),
                link.ampacityAt() == null ? Head.or(link.ampacity()) : link.ampacity() + " at " + link.ampacityAt(),
                Head.or(link.ambient()),
                guards(link, guards),
                Head.or(link.colour()),
                link.place() == null ? Head.or(null) : link.place().toString().replace('-', ' '));
    }

    private static String and(@Nullable Quantity first, @Nullable Quantity second) {
        String both = Stream.of(first, second)
                .filter(quantity -> quantity != null)
                .map(String::valueOf)
                .collect(Collectors.joining(", "));
        return both.isEmpty() ? Head.or(null) : both;
    }

    /** The fuses of a cable, from whichever end it is fed. */
    private static String guards(Link link, Guards guards) {
        List<Guards.Guard> found = guards.of(link);
        if (found.isEmpty()) {
            return Head.or(null);
        }
        String fuses = found.stream()
                .flatMap(guard -> guard.fuses().stream())
                .map(Part::id)
                .distinct()
                .collect(Collectors.joining(", "));
        boolean isBare = found.stream().anyMatch(guard -> guard.fuses().isEmpty());
        return isBare ? (fuses.isEmpty() ? "no fuse" : fuses + "; from one side no fuse") : fuses;
    }

    private static FuseLine fuse(Part part, Car car) {
        Fuse fuse = part.fuse();
        String guarded = car.circuit().links().stream()
                .filter(link -> link.kind().isCable())
                .filter(link -> car.guards().of(link).stream()
                        .anyMatch(guard -> guard.fuses().contains(part)))
                .map(Link::id)
                .collect(Collectors.joining(", "));
        return new FuseLine(
                part.id(),
                part.title(),
                where(part),
                Head.or(fuse == null ? null : fuse.current()),
                voltage(fuse),
                breaks(fuse),
                Head.or(fuse == null ? null : fuse.letThrough()),
                guarded.isEmpty() ? Head.or(null) : guarded);
    }

    private static String where(Part part) {
        Enclosure enclosure = part.enclosure();
        if (part.inside() != null) {
            return "in " + part.inside();
        }
        return enclosure == null || enclosure.place() == null
                ? Head.or(null)
                : enclosure.place().toString().replace('-', ' ');
    }

    private static String voltage(@Nullable Fuse fuse) {
        if (fuse == null || (fuse.dcVoltage() == null && fuse.acVoltage() == null)) {
            return Head.or(null);
        }
        return fuse.dcVoltage() == null ? fuse.acVoltage() + " AC only" : fuse.dcVoltage() + " DC";
    }

    private static String breaks(@Nullable Fuse fuse) {
        if (fuse == null || fuse.breakingCapacity() == null) {
            return Head.or(null);
        }
        return fuse.minimumBreaking() == null
                ? fuse.breakingCapacity().toString()
                : fuse.minimumBreaking() + " to " + fuse.breakingCapacity();
    }
}
