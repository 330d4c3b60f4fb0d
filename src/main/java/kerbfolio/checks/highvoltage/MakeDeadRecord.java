package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Evidence;
import kerbfolio.car.LiveParts;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.TestPoint;
import org.jspecify.annotations.Nullable;

/** The next mechanic has only the paper: what the make-dead procedure needs and nobody wrote, he will guess. */
public final class MakeDeadRecord implements Check {
    private static final String KEY = "make-dead-record";

    @Override
    public String question() {
        return "Is everything recorded that the make-dead procedure needs?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public boolean isWaivable() {
        return false;
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var asked = new ArrayList<Term>();
        disconnects(car.circuit(), asked);
        testPoints(car, limits.term("low-voltage", "V"), asked);
        car.circuit()
                .buses(car.circuit().disconnects().stream().map(Part::id).toList())
                .forEach(bus -> decay(car, bus, asked));
        motors(car.job().parts(), asked);
        return asked.stream().map(term -> Finding.judged(term.name(), term, limits, KEY));
    }

    private static void disconnects(Circuit circuit, List<Term> asked) {
        if (circuit.disconnects().isEmpty()) {
            asked.add(asked("parts", "a service disconnect", null));
        }
        for (Part part : circuit.disconnects()) {
            boolean isPlaced = part.position() != null
                    || (part.enclosure() != null && part.enclosure().place() != null);
            asked.add(asked(
                    "parts[" + part.id() + "].enclosure.place",
                    "where " + part.id() + " sits",
                    isPlaced ? "yes" : null));
        }
    }

    private static void testPoints(Car car, Term low, List<Term> asked) {
        LiveParts live = car.madeDead();
        List<Part> points = car.job().parts().stream()
                .filter(part -> part.testPoint() != null)
                .toList();
        points.stream()
                .filter(part -> live.staysLive(part, low))
                .forEach(part -> asked.add(Evidence.solved(
                        "parts[" + part.id() + "].test-point",
                        "that the test point at " + part.id() + " can be dead",
                        0,
                        "1",
                        part.id()
                                + " keeps its voltage with every disconnect out; a reading there shows no dead car")));
        if (points.stream().allMatch(part -> live.staysLive(part, low))) {
            String path = car.job().parts().stream()
                    .filter(part -> part.role() == Role.INVERTER)
                    .findFirst()
                    .map(part -> "parts[" + part.id() + "].test-point")
                    .orElse("parts");
            asked.add(asked(path, "a test point", null));
        }
        for (Part part : points) {
            TestPoint point = part.testPoint();
            String path = "parts[" + part.id() + "].test-point.";
            String of = " of the test point at " + part.id();
            asked.add(asked(path + "cover", "cover" + of, point == null ? null : point.cover()));
            asked.add(asked(path + "equipment", "protective equipment" + of, point == null ? null : point.equipment()));
        }
    }

    /** What the wait is computed from: every capacitance on a bus, and something that empties it. */
    private static void decay(Car car, Circuit.Bus bus, List<Term> asked) {
        for (Part part : bus.parts()) {
            Term term = car.nameplate(part).capacitance();
            asked.add(asked(
                    "parts[" + part.id() + "].electrical.capacitance",
                    "capacitance of " + part.id(),
                    term.amount().isPresent() ? term.origin() : null));
        }
        asked.add(asked(
                "parts[" + bus.parts().get(0).id() + "].electrical.bleed",
                "bleed resistance on " + bus,
                bus.parts().stream()
                        .map(part -> car.nameplate(part).bleed())
                        .filter(term -> term.amount().isPresent())
                        .findFirst()
                        .map(Term::origin)
                        .orElse(null)));
    }

    private static void motors(List<Part> parts, List<Term> asked) {
        List<Part> motors = parts.stream()
                .filter(part -> part.motor() != null || part.role() == Role.DRIVE_UNIT || part.role() == Role.MOTOR)
                .toList();
        if (motors.isEmpty()) {
            asked.add(asked("parts", "a motor and its kind", null));
        }
        for (Part part : motors) {
            var kind = part.motor() == null ? null : part.motor().kind();
            asked.add(asked(
                    "parts[" + part.id() + "].motor.kind",
                    "kind of the motor in " + part.id(),
                    kind == null ? null : kind.toString()));
        }
    }

    private static Term asked(String path, String name, @Nullable String written) {
        return written == null || written.isBlank()
                ? Absent.unrecorded(path, name, "1")
                : Evidence.solved(path + ", recorded", name, 1, "1", "recorded: " + written);
    }
}
