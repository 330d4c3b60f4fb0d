package kerbfolio.checks.highvoltage;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Link;
import kerbfolio.job.LinkKind;

/** What the checks of conductors and fuses go through, one by one. */
final class Subjects {
    private Subjects() {}

    /** High-voltage cables of the circuit; a busbar inside a box is its box's affair. */
    static List<Link> cables(Car car) {
        return car.circuit().links().stream()
                .filter(link -> link.kind() == LinkKind.HIGH_VOLTAGE)
                .toList();
    }

    /** A finding of each; where none is recorded, that is the finding. */
    static <T> Stream<Finding> each(List<T> subjects, Function<T, Finding> find, Finding none) {
        return subjects.isEmpty() ? Stream.of(none) : subjects.stream().map(find);
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
