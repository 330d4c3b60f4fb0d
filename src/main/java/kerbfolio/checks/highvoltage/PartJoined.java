package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Evidence;
import kerbfolio.car.Terminal;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** Every other walk of the circuit trusts its links: a cable nobody wrote down makes a live part look dead. */
public final class PartJoined implements Check {
    @Override
    public String question() {
        return "Do the recorded links lead from every terminal of every part to a box of cells?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Subjects.ofCircuit(
                car,
                "1",
                limits,
                "part-joined",
                circuit -> circuit.parts().stream()
                        .map(part -> Finding.judged(part.id(), loose(circuit, part), limits, "part-joined")));
    }

    private static Term loose(Circuit circuit, Part part) {
        List<Terminal> loose = circuit.terminals(part.id()).stream()
                .filter(terminal -> !isFed(circuit, part, terminal))
                .toList();
        String which = loose.stream().map(Terminal::toString).collect(Collectors.joining(", "));
        String words = loose.isEmpty() ? "every terminal is led on" : "no recorded link leads on from " + which;
        return Evidence.solved("links", "terminals that lead to no box of cells", loose.size(), "1", words);
    }

    /** Whether a way leads on from a terminal, past the part itself, to a pole of a box of cells. */
    private static boolean isFed(Circuit circuit, Part part, Terminal terminal) {
        return circuit.reach(terminal, bond -> !bond.id().equals(part.id())).stream()
                .anyMatch(end -> !end.equals(terminal)
                        && circuit.part(end.part())
                                .filter(box -> box.role() == Role.BATTERY)
                                .isPresent());
    }
}
