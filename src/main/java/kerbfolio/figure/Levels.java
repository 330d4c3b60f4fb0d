package kerbfolio.figure;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Potentials;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** How high the voltage of each part is with everything closed, so that the higher stands above. */
final class Levels {
    private final Circuit circuit;
    private final Potentials closed;

    Levels(Car car) {
        circuit = car.circuit();
        var volts = new HashMap<>(car.pack().boxVolts());
        circuit.parts(Role.BATTERY).forEach(box -> volts.putIfAbsent(box.id(), 1.0));
        closed = circuit.potentials(List.of(), volts);
    }

    /** Nothing joined to it counts as lowest. */
    double of(Part part) {
        return circuit.terminals(part.id()).stream()
                .mapToDouble(closed::level)
                .average()
                .orElse(-1);
    }

    List<Part> sorted(Collection<Part> parts) {
        return parts.stream()
                .sorted(Comparator.comparingDouble(part -> -of(part)))
                .toList();
    }
}
