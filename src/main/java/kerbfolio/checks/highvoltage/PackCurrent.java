package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Term;
import kerbfolio.formula.Unknown;
import kerbfolio.job.Gate;

/**
 * A chain of ratings is worth its weakest, and nobody remembers which that is. Fuses and cables have no rating for
 * seconds: they stand in the duties without end.
 */
@Sheet(Sheets.CABLES)
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
            found.add(Finding.judged(
                    duty + ", ratings not known",
                    new Unknown(
                            "ratings in " + duty,
                            unknown.stream().map(Element::use).toList()),
                    limits,
                    KEY));
        }
        return found.stream();
    }
}
