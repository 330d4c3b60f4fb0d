package kerbfolio.car;

import java.util.Optional;
import java.util.function.Function;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Motor;
import kerbfolio.job.MotorKind;
import kerbfolio.job.Part;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** The figures of a motor as terms. */
public final class MotorPlate {
    /** An angle for a time: the unit rpm holds the 2π of a turn. */
    static final Formula SPEED = Formula.of("n = v*i/r")
            .giving("speed of the motor", "rpm")
            .with("v", "speed of the car", "km/h")
            .with("i", "turns of the motor for one of the wheel", "1")
            .with("r", "rolling radius", "mm")
            .needs("r > 0*[mm]")
            .from(Source.DYNAMICS.clause("rolling without slip"))
            .build();

    private final Evidence evidence;
    private final Part part;

    MotorPlate(Evidence evidence, Part part) {
        this.evidence = evidence;
        this.part = part;
    }

    /** What kind of motor it is; empty if nobody wrote it. */
    public Optional<MotorKind> kind() {
        return Optional.ofNullable(part.motor()).map(Motor::kind);
    }

    public Term backVoltage() {
        return rating("back-voltage", "voltage the turned motor makes", "V", Motor::backVoltage);
    }

    /** Speed at which it makes that voltage. */
    public Term backVoltageAt() {
        return rating("back-voltage-at", "speed it makes that at", "rpm", Motor::backVoltageAt);
    }

    public Term towSpeed() {
        return rating("tow-speed", "tow speed", "km/h", Motor::towSpeed);
    }

    /** Its speed at a speed of the car. */
    public Working speed(Term ofCar) {
        return Working.fill(SPEED)
                .named("speed of the motor in " + part.title())
                .put("v", ofCar)
                .put("i", rating("ratio", "ratio", "1", Motor::ratio))
                .put("r", rating("rolling-radius", "rolling radius", "mm", Motor::rollingRadius))
                .work();
    }

    private Term rating(String key, String name, String unit, Function<Motor, @Nullable Quantity> of) {
        Motor motor = part.motor();
        return evidence.stated(
                "parts[" + part.id() + "].motor." + key,
                name + " of " + part.title(),
                unit,
                motor == null ? null : of.apply(motor),
                motor == null ? null : motor.from());
    }
}
