package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Unit;

/**
 * A chain of ratings is worth its weakest, and nobody remembers which that is. Fuses and cables have no rating for
 * seconds: they stand in the duties without end.
 */
public final class PackCurrent implements Check {
    private static final String KEY = "pack-current";

    @Override
    public String question() {
        return "Does everything on its way carry the current of the pack?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(Duty.values()).flatMap(duty -> findings(duty, Element.all(car, duty), limits));
    }

    private static Stream<Finding> findings(Duty duty, List<Element> elements, Limits limits) {
        List<Element> known = elements.stream().filter(Element::isKnown).toList();
        List<Element> unknown =
                elements.stream().filter(element -> !element.isKnown()).toList();
        var found = new ArrayList<Finding>();
        if (!known.isEmpty()) {
            Term most = Subjects.worst(known.stream().map(Element::use).toList());
            String weakest = known.stream()
                    .filter(element -> element.use() == most)
                    .map(Element::name)
                    .findFirst()
                    .orElse("");
            found.add(Finding.judged(duty + ", weakest: " + weakest, most, limits, KEY));
        }
        if (!unknown.isEmpty()) {
            found.add(Finding.judged(duty + ", ratings not known", lacking(unknown), limits, KEY));
        }
        return found.stream();
    }

    /** All that is lacking as one; a reason goes before what only nobody wrote. */
    private static Absent lacking(List<Element> unknown) {
        Optional<Term> refused = unknown.stream()
                .map(Element::use)
                .filter(use -> !use.missing().stream().allMatch(Absent::isUnrecorded)
                        || use.missing().isEmpty())
                .findFirst();
        List<Absent> missing = unknown.stream()
                .flatMap(element -> element.use().missing().stream())
                .distinct()
                .toList();
        return new Absent(
                missing.stream().map(Absent::path).collect(Collectors.joining(", ")),
                missing.isEmpty()
                        ? unknown.get(0).name()
                        : missing.stream().map(Absent::name).collect(Collectors.joining(", ")),
                Unit.of("%"),
                refused.map(Term::origin).orElse(Absent.UNRECORDED));
    }
}
