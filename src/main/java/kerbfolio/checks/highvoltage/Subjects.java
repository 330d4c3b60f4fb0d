package kerbfolio.checks.highvoltage;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Link;
import kerbfolio.job.LinkKind;
import kerbfolio.job.Part;

/** What the checks of conductors and fuses go through, one by one. */
final class Subjects {
    private Subjects() {}

    /** High-voltage cables of the circuit; a busbar inside a box is its box's affair. */
    static List<Link> cables(Car car) {
        return car.circuit().links().stream()
                .filter(link -> link.kind() == LinkKind.HIGH_VOLTAGE)
                .toList();
    }

    /** A finding of each cable under its id; where none is recorded, that is the finding. */
    static Stream<Finding> cables(
            String what, List<Link> cables, Limits limits, String key, Function<Link, Term> find) {
        return cables.isEmpty()
                ? Stream.of(unrecorded(what, "links", limits, key))
                : cables.stream().map(cable -> Finding.judged(cable.id(), find.apply(cable), limits, key));
    }

    /** A finding of each part under its id; where none is recorded, that is the finding. */
    static Stream<Finding> parts(String what, List<Part> parts, Limits limits, String key, Function<Part, Term> find) {
        return parts.isEmpty()
                ? Stream.of(unrecorded(what, "parts", limits, key))
                : parts.stream().map(part -> Finding.judged(part.id(), find.apply(part), limits, key));
    }

    /** What is found in the circuit; where no link of it is recorded, that is the finding. */
    static Stream<Finding> ofCircuit(
            Car car, String unit, Limits limits, String key, Function<Circuit, Stream<Finding>> find) {
        Term links = Absent.unrecorded("links", "links of the traction circuit", unit);
        return car.circuit().isRecorded()
                ? find.apply(car.circuit())
                : Stream.of(Finding.judged("traction circuit", links, limits, key));
    }

    /** The finding where nobody wrote any of them down. */
    static Finding unrecorded(String what, String section, Limits limits, String key) {
        String name = section.equals("links") ? "what joins what" : "what was fitted";
        return Finding.judged(what, Absent.unrecorded(section, name, "1"), limits, key);
    }

    /** Of several uses the largest; what is not known goes before what is within its rating, and after what is not. */
    static Term worst(List<? extends Term> uses) {
        Term largest = uses.get(0);
        Comparator<Term> rank = Comparator.comparingDouble(Subjects::rank);
        for (Term use : uses) {
            largest = rank.compare(use, largest) > 0 ? use : largest;
        }
        return largest;
    }

    /** In shares of a rating; an unknown one counts as just used up. */
    private static double rank(Term use) {
        return use.amount().map(amount -> amount.si()).orElse(1.0);
    }
}
