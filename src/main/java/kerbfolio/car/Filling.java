package kerbfolio.car;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import kerbfolio.car.Circuit.Bus;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Pack;
import kerbfolio.job.Part;
import kerbfolio.job.Precharge;
import kerbfolio.job.Role;
import org.jspecify.annotations.Nullable;

/**
 * How the bus is filled before the main contactor closes. What the resistor fills is found by closing one contactor at a
 * time: whatever then hangs on a box of cells through the resistor, and without it does not.
 */
public final class Filling {
    private final Evidence evidence;
    private final @Nullable Precharge precharge;
    private final @Nullable Part resistor;
    private final List<Part> contactors = new ArrayList<>();
    private final @Nullable Capacitors capacitors;

    Filling(Evidence evidence, @Nullable Pack pack, Circuit circuit, Function<Bus, Capacitors> of) {
        this.evidence = evidence;
        this.precharge = pack == null ? null : pack.precharge();
        String id = precharge == null ? null : precharge.resistor();
        this.resistor = id == null ? null : circuit.part(id).orElse(null);
        var filled = new HashSet<Part>();
        if (resistor != null) {
            List<String> ids = circuit.contactors().stream().map(Part::id).toList();
            filled.addAll(filled(circuit, resistor, ids));
            for (Part contactor : circuit.contactors()) {
                var open = new ArrayList<>(ids);
                open.remove(contactor.id());
                if (filled.addAll(filled(circuit, resistor, open))) {
                    contactors.add(contactor);
                }
            }
        }
        List<Part> inOrder = circuit.parts().stream().filter(filled::contains).toList();
        this.capacitors = filled.isEmpty() ? null : of.apply(new Bus(inOrder));
    }

    private static List<Part> filled(Circuit circuit, Part resistor, List<String> open) {
        var without = new ArrayList<>(open);
        without.add(resistor.id());
        Set<Terminal> through = new HashSet<>();
        for (Part box : circuit.parts(Role.BATTERY)) {
            for (Terminal pole : List.of(Terminal.plus(box.id()), Terminal.minus(box.id()))) {
                Set<Terminal> net = new HashSet<>(circuit.net(pole, open));
                net.removeAll(circuit.net(pole, without));
                through.addAll(net);
            }
        }
        return circuit.parts().stream()
                .filter(part -> part.role() != Role.BATTERY
                        && (through.contains(Terminal.plus(part.id())) || through.contains(Terminal.minus(part.id()))))
                .toList();
    }

    /** The resistor, where one is named and fitted. */
    public Optional<Part> resistor() {
        return Optional.ofNullable(resistor);
    }

    /** Contactors that let the filling current flow. */
    public List<Part> contactors() {
        return List.copyOf(contactors);
    }

    /** Whether the main contactor waits for the voltage of the bus and not only for the time. */
    public boolean isByVoltage() {
        return precharge != null && Boolean.TRUE.equals(precharge.byVoltage());
    }

    public Term time() {
        return evidence.stated(
                "pack.precharge.time",
                "time until the main contactor closes",
                "s",
                precharge == null ? null : precharge.time(),
                precharge == null ? null : precharge.from());
    }

    public Term resistance() {
        return resistor == null ? unnamed("Ω") : new Nameplate(evidence, resistor).resistance();
    }

    /** Energy the resistor takes in one pulse. */
    public Term pulseEnergy() {
        return resistor == null ? unnamed("J") : new Nameplate(evidence, resistor).pulseEnergy();
    }

    /** Capacitance the resistor fills. */
    public Term capacitance() {
        return capacitors == null ? nothingFilled("µF") : capacitors.total();
    }

    /** The resistor turns as much into heat as the capacitors come to hold. */
    public Term energy(Working voltage) {
        return capacitors == null ? nothingFilled("J") : capacitors.energy(voltage);
    }

    private static Term unnamed(String unit) {
        return Absent.unrecorded("pack.precharge.resistor", "the pre-charge resistor", unit);
    }

    private Term nothingFilled(String unit) {
        return resistor == null
                ? unnamed(unit)
                : Absent.unrecorded("links", "what joins the pre-charge resistor to a box and a bus", unit);
    }
}
