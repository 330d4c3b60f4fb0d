package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.MotorPlate;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.LinkKind;
import kerbfolio.job.MotorKind;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** A magnet motor that is towed or runs downhill is a generator nobody switched on. */
@Sheet(Sheets.CABLES)
public final class BackVoltage implements Check {
    static final Formula USE = Formula.of("u = U_ref*n/n_ref/U_max")
            .giving("voltage the motor makes over what the inverter bears", "%")
            .with("U_ref", "voltage it makes at a speed", "V")
            .with("n_ref", "that speed", "rpm")
            .with("n", "speed of the motor", "rpm")
            .with("U_max", "highest permitted voltage of the inverter", "V")
            .needs("n_ref > 0*[rpm]")
            .needs("U_max > 0*[V]")
            .from(Source.CIRCUITS.clause("a voltage induced goes with the speed"))
            .build();

    private static final String KEY = "back-voltage";

    @Override
    public String question() {
        return "Does the inverter bear what the motor makes when it is turned?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Part> motors = car.job().parts().stream()
                .filter(part -> part.role() == Role.MOTOR || part.role() == Role.DRIVE_UNIT || part.motor() != null)
                .toList();
        return motors.isEmpty()
                ? Stream.of(Subjects.unrecorded("motors", "parts", limits, KEY))
                : motors.stream().flatMap(motor -> findings(car, motor, limits));
    }

    private static Stream<Finding> findings(Car car, Part part, Limits limits) {
        MotorPlate motor = car.motor(part);
        if (motor.kind().isEmpty()) {
            Term kind = Absent.unrecorded(
                    "parts[" + part.id() + "].motor.kind", "kind of the motor in " + part.title(), "%");
            return Stream.of(Finding.judged(part.id(), kind, limits, KEY));
        }
        return motor.kind().get() != MotorKind.MAGNET
                ? Stream.empty()
                : Stream.of(
                        Finding.judged(part.id() + ", towed", use(car, part, motor.towSpeed()), limits, KEY),
                        Finding.judged(part.id() + ", at top speed", use(car, part, car.topSpeed()), limits, KEY));
    }

    private static Working use(Car car, Part part, Term speed) {
        MotorPlate motor = car.motor(part);
        return Working.fill(USE)
                .put("U_ref", motor.backVoltage())
                .put("n_ref", motor.backVoltageAt())
                .put("n", motor.speed(speed))
                .put("U_max", car.nameplate(inverter(car, part)).maxVoltage())
                .work();
    }

    /** What the motor's phases end at; the part itself where they do not leave it. */
    private static Part inverter(Car car, Part motor) {
        return car.job().links().stream()
                .filter(link -> link.kind() == LinkKind.PHASE)
                .filter(link -> isAt(link.from(), motor) || isAt(link.to(), motor))
                .map(link -> isAt(link.from(), motor) ? link.to() : link.from())
                .filter(Objects::nonNull)
                .flatMap(end -> car.job().parts().stream().filter(part -> isAt(end, part)))
                .findFirst()
                .orElse(motor);
    }

    private static boolean isAt(@Nullable String end, Part part) {
        return end != null && (end.equals(part.id()) || end.startsWith(part.id() + "/"));
    }
}
