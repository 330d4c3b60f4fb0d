package kerbfolio.checks.highvoltage;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.car.Guards.Guard;
import kerbfolio.car.Guards.Way;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.quantity.Unit;

/** A cable and the fuses before it: of those in a row the first to open counts, and each way to the cable needs one. */
final class Guarded {
    private Guarded() {}

    /** What is found from the end where it is worst. */
    static Term worst(Car car, Link cable, Function<Guard, Term> find) {
        List<Term> found = car.guards().of(cable).stream().map(find).toList();
        return found.isEmpty()
                ? new Absent(
                        "links[" + cable.id() + "]",
                        "what feeds " + cable.id(),
                        Unit.ONE,
                        "no box of cells feeds it by the links recorded")
                : Subjects.worst(found);
    }

    /** Of the fuses on each way the least figure of those known. */
    static List<Term> least(Guard guard, String unit, Function<Part, Term> figure) {
        return guard.ways().stream().map(way -> least(guard, way, unit, figure)).toList();
    }

    private static Term least(Guard guard, Way way, String unit, Function<Part, Term> figure) {
        List<Term> figures = way.fuses().stream().map(figure).toList();
        if (figures.isEmpty()) {
            return new Absent(
                    "links[" + guard.link().id() + "]",
                    "fuse before " + guard.link().id() + " at " + guard.end(),
                    Unit.of(unit),
                    "no fuse stands between it and " + names(way.boxes()));
        }
        return figures.stream()
                .filter(term -> term.amount().isPresent())
                .min(Comparator.comparingDouble(
                        term -> term.amount().map(amount -> amount.si()).orElse(0.0)))
                .orElse(figures.get(0));
    }

    /** The largest of several; one that is not known goes before. */
    static Term largest(List<Term> terms) {
        return terms.stream()
                .max(Comparator.comparingDouble(
                        term -> term.amount().map(amount -> amount.si()).orElse(Double.MAX_VALUE)))
                .orElseThrow();
    }

    static String names(List<Part> parts) {
        return String.join(", ", parts.stream().map(Part::id).toList());
    }

    /** Ways that feed the cable together. */
    static Term ways(Guard guard) {
        return Evidence.solved(
                "links",
                "ways current comes to " + guard.end(),
                guard.ways().size(),
                "1",
                String.join(
                        "; ",
                        guard.ways().stream().map(way -> names(way.boxes())).toList()));
    }
}
