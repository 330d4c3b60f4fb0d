package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.car.Corner;
import kerbfolio.check.Limits;
import kerbfolio.formula.Term;
import kerbfolio.job.Job;
import kerbfolio.job.Part;
import kerbfolio.job.Position;
import kerbfolio.job.Removed;
import kerbfolio.procedure.MakeDead;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The part for the next mechanic: what is in the car, what came out and what putting it back needs, and how the car was
 * left.
 *
 * @param makeDead how the car is made dead
 * @param parts what is fitted, with the marks that identify it
 * @param reversal what came out
 * @param baseline figures as left, to be compared with later readings
 */
public record Workshop(MakeDead makeDead, List<PartLine> parts, List<ReversalLine> reversal, List<Fact> baseline) {
    /** A part exactly as it is marked. */
    public record PartLine(
            String name, String make, String model, String partNumber, String serial, String firmware, String place) {}

    /** Something taken out: where it is, and what putting it back needs. */
    public record ReversalLine(String name, String fate, String puttingBack, String place) {}

    static Workshop of(Car car, Limits limits, UnitSystem system) {
        Job job = car.job();
        return new Workshop(
                MakeDead.of(car, limits),
                job.parts().stream()
                        .filter(Workshop::isMarked)
                        .map(Workshop::line)
                        .toList(),
                job.removed().stream().map(Workshop::line).toList(),
                baseline(car, system));
    }

    /** A part of which only the mass is known is told by the ledger already. */
    private static boolean isMarked(Part part) {
        return part.position() != null
                || Stream.of(part.make(), part.model(), part.partNumber(), part.serial(), part.firmware())
                        .anyMatch(mark -> mark != null);
    }

    private static PartLine line(Part part) {
        return new PartLine(
                part.name() == null ? part.id() : part.name(),
                Head.or(part.make()),
                Head.or(part.model()),
                Head.or(part.partNumber()),
                Head.or(part.serial()),
                Head.or(part.firmware()),
                place(part.position()));
    }

    private static ReversalLine line(Removed item) {
        return new ReversalLine(
                item.name() == null ? item.id() : item.name(),
                Head.or(item.fate()),
                Head.or(item.puttingBack()),
                place(item.position()));
    }

    /** In words; without them by the distance from the front axle. */
    private static String place(@Nullable Position position) {
        if (position == null || (position.zone() == null && position.x() == null)) {
            return Head.or(null);
        }
        if (position.zone() != null) {
            return position.zone();
        }
        String x = String.valueOf(position.x());
        return x.startsWith("-") ? x.substring(1) + " ahead of front axle" : x + " behind front axle";
    }

    private static List<Fact> baseline(Car car, UnitSystem system) {
        var facts = new ArrayList<Fact>();
        for (Corner corner : Corner.values()) {
            add(corner.toString(), car.delivered().corner(corner), system, facts);
        }
        for (Axle axle : Axle.values()) {
            add(axle.toString(), car.delivered().axle(axle), system, facts);
        }
        add("whole car", car.delivered().total(), system, facts);
        for (Axle axle : Axle.values()) {
            add("ride height, " + axle, car.suspension(axle).heightAfter(), system, facts);
        }
        return List.copyOf(facts);
    }

    private static void add(String label, Term term, UnitSystem system, List<Fact> facts) {
        Fact fact = Fact.of(label, term, system);
        if (fact.value().isKnown()) {
            facts.add(fact);
        }
    }
}
