package kerbfolio.checks.highvoltage;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.formula.Term;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/**
 * What the current of some consumers passes on its way from and to the boxes of cells.
 *
 * @param car the car
 * @param consumers whose current it is
 * @param ids of the parts and cables it passes
 */
record Loop(Car car, List<Part> consumers, Set<String> ids) {
    /** The loop of what drives the car. */
    static Loop ofDrives(Car car) {
        return of(car, Role.INVERTER, Role.DRIVE_UNIT);
    }

    /** The loop of what charges the pack: an inlet for direct current where there is one, for it brings the most. */
    static Loop ofCharge(Car car) {
        Loop inlet = of(car, Role.INLET);
        return inlet.consumers().isEmpty() ? of(car, Role.CHARGER) : inlet;
    }

    /** Contactors of drive and charge, each with the loop it lies in; the drive's goes before. */
    static Map<Part, Loop> ofContactors(Car car) {
        var loops = new LinkedHashMap<Part, Loop>();
        for (Loop loop : List.of(ofDrives(car), ofCharge(car))) {
            loop.parts(Role.CONTACTOR).forEach(contactor -> loops.putIfAbsent(contactor, loop));
        }
        return loops;
    }

    private static Loop of(Car car, Role... roles) {
        List<Part> consumers = Stream.of(roles)
                .flatMap(role -> car.circuit().parts(role).stream())
                .toList();
        var ids = new LinkedHashSet<String>();
        consumers.forEach(consumer -> ids.addAll(car.circuit().loop(consumer)));
        return new Loop(car, consumers, ids);
    }

    boolean has(String id) {
        return ids.contains(id);
    }

    List<Part> parts(Role role) {
        return car.circuit().parts(role).stream().filter(part -> has(part.id())).toList();
    }

    /** Strings that share the current: what lies in one of several carries its part of it. */
    Term sharing(String id) {
        return car.guards().isOfOneString(id) ? car.pack().plate().strings() : whole("all of it passes " + id);
    }

    /** The current is not shared. */
    static Term whole(String why) {
        return Evidence.solved("links", "strings that share the current", 1, "1", why);
    }
}
