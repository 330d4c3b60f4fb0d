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
import kerbfolio.job.Connector;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.quantity.Unit;

/**
 * A chain of ratings is worth its weakest, and nobody remembers which that is. Fuses and cables have no rating for
 * seconds: they stand in the duties without end.
 */
public final class PackCurrent implements Check {
    private static final String KEY = "pack-current";

    /**
     * Something the current passes.
     *
     * @param name what it is
     * @param use of its rating
     */
    private record Element(String name, Term use) {
        boolean isKnown() {
            return use.amount().isPresent();
        }
    }

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
        return Stream.of(Duty.values()).flatMap(duty -> findings(duty, elements(car, duty), limits));
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

    private static List<Element> elements(Car car, Duty duty) {
        Loop loop = duty == Duty.CHARGE ? Loop.of(car, Role.CHARGER) : Loop.ofDrives(car);
        Term current = duty.current(car);
        var elements = new ArrayList<Element>();
        elements.add(new Element(
                "module", CurrentUse.of("a module", current, car.pack().strings(), duty.ofModule(car))));
        if (!duty.isPeak()) {
            Subjects.cables(car).stream()
                    .filter(cable -> loop.has(cable.id()))
                    .forEach(cable -> elements.add(element(
                            loop, cable.id(), cable.id(), current, car.conductor(cable).ampacity())));
            loop.parts(Role.FUSE)
                    .forEach(fuse -> elements.add(element(
                            loop, fuse.id(), fuse.id(), current, car.fuse(fuse).continuousCurrent())));
        }
        Stream.of(Role.CONTACTOR, Role.DISCONNECT, Role.CURRENT_SENSOR)
                .flatMap(role -> loop.parts(role).stream())
                .forEach(part -> elements.add(element(
                        loop,
                        part.id(),
                        part.id(),
                        current,
                        duty.isPeak()
                                ? car.nameplate(part).peakCurrent()
                                : car.nameplate(part).continuousCurrent())));
        Stream.concat(car.circuit().parts().stream().filter(part -> loop.has(part.id())), loop.consumers().stream())
                .forEach(part -> part.connectors()
                        .forEach(connector -> elements.add(element(
                                loop, part.id(), connector.id(), current, rated(car, part, connector, duty)))));
        return elements;
    }

    private static Element element(Loop loop, String id, String name, Term current, Term rated) {
        return new Element(name, CurrentUse.of(name, current, loop.sharing(id), rated));
    }

    private static Term rated(Car car, Part part, Connector connector, Duty duty) {
        String key = duty.isPeak() ? "peak-current" : "current";
        return car.evidence()
                .stated(
                        "parts[" + part.id() + "].connectors[" + connector.id() + "]." + key,
                        key.replace('-', ' ') + " of " + connector.id(),
                        "A",
                        duty.isPeak() ? connector.peakCurrent() : connector.current(),
                        connector.from());
    }
}
