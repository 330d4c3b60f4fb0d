package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.formula.Term;
import kerbfolio.job.Connector;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/**
 * Something the current of a duty passes.
 *
 * @param name what it is
 * @param use of its rating
 */
record Element(String name, Term use) {
    boolean isKnown() {
        return use.amount().isPresent();
    }

    /** Everything on the way of a duty whose rating there should be. */
    static List<Element> all(Car car, Duty duty) {
        Loop loop = duty == Duty.CHARGE ? Loop.ofCharge(car) : Loop.ofDrives(car);
        Term current = duty.current(car);
        var elements = new ArrayList<Element>();
        elements.add(new Element(
                "module", CurrentUse.of("a module", current, car.pack().plate().strings(), duty.ofModule(car))));
        if (!duty.isPeak()) {
            Subjects.cables(car).stream()
                    .filter(cable -> loop.has(cable.id()))
                    .forEach(cable -> elements.add(of(
                            loop,
                            cable.id(),
                            cable.id(),
                            current,
                            car.conductor(cable).ampacity())));
            loop.parts(Role.FUSE)
                    .forEach(fuse -> elements.add(of(
                            loop, fuse.id(), fuse.id(), current, car.fuse(fuse).continuousCurrent())));
        }
        Stream.of(Role.CONTACTOR, Role.DISCONNECT, Role.CURRENT_SENSOR)
                .flatMap(role -> loop.parts(role).stream())
                .forEach(part -> elements.add(of(
                        loop,
                        part.id(),
                        part.id(),
                        current,
                        duty.isPeak()
                                ? car.nameplate(part).peakCurrent()
                                : car.nameplate(part).continuousCurrent())));
        Stream.concat(car.circuit().parts().stream().filter(part -> loop.has(part.id())), loop.consumers().stream())
                .forEach(part -> part.connectors()
                        .forEach(connector -> elements.add(
                                of(loop, part.id(), connector.id(), current, rated(car, part, connector, duty)))));
        return elements;
    }

    private static Element of(Loop loop, String id, String name, Term current, Term rated) {
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
