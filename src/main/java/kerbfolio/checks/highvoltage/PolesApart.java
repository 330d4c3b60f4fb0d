package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
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
        return Subjects.ofCircuit(
                car,
                "1",
                limits,
                "poles-apart",
                circuit -> circuit.parts().stream()
                        .filter(part -> part.role() != null && part.role().ports() == Ports.TWO_POLES)
                        .map(part -> Finding.judged(part.id(), joined(circuit, part), limits, "poles-apart")));
    }

    private static Term joined(Circuit circuit, Part part) {
        List<String> way = circuit.way(Terminal.plus(part.id()), Terminal.minus(part.id()));
        String words = way.isEmpty()
                ? "no conductor joins its poles"
                : "its poles are joined through " + String.join(", ", way);
        return Evidence.solved("links", "ways without a consumer from pole to pole", way.isEmpty() ? 0 : 1, "1", words);
    }
}
