package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Bond;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Evidence;
import kerbfolio.car.Terminal;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role.Ports;

/** A cable on the wrong pole, in the car or only in the record, is a short circuit the moment everything is closed. */
public final class PolesApart implements Check {
    @Override
    public String question() {
        return "Does any conductor join the two poles of a part, with everything closed?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Circuit circuit = car.circuit();
        if (!circuit.isRecorded()) {
            Term links = Absent.unrecorded("links", "links of the traction circuit", "1");
            return Stream.of(Finding.judged("traction circuit", links, limits, "poles-apart"));
        }
        return circuit.parts().stream()
                .filter(part -> part.role() != null && part.role().ports() == Ports.TWO_POLES)
                .map(part -> Finding.judged(part.id(), joined(circuit, part), limits, "poles-apart"));
    }

    private static Term joined(Circuit circuit, Part part) {
        List<Terminal> poles = circuit.terminals(part.id());
        Set<Terminal> net = circuit.net(poles.get(0), Set.of());
        boolean isShort = poles.stream().allMatch(net::contains);
        String words = isShort
                ? "its poles are joined through " + String.join(", ", way(circuit, poles.get(0), poles.get(1)))
                : "no conductor joins its poles";
        return Evidence.solved("links", "ways without a consumer from pole to pole", isShort ? 1 : 0, "1", words);
    }

    /** Links and parts of one way between two terminals: whatever the way can do without is left out, one by one. */
    private static List<String> way(Circuit circuit, Terminal from, Terminal to) {
        var left = new ArrayList<String>();
        var out = new HashSet<String>();
        for (String id : circuit.bonds().stream().map(Bond::id).distinct().toList()) {
            out.add(id);
            if (!circuit.net(from, out).contains(to)) {
                out.remove(id);
                left.add(id);
            }
        }
        return left;
    }
}
