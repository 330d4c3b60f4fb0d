package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Conductor;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Link;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Source;

/** Volts that stay in the cable never reach the road. */
@Sheet(Sheets.CABLES)
public final class VoltageDrop implements Check {
    static final Formula DROP = Formula.of("u = N*R_T*I/(n*U_n)")
            .giving("voltage lost in the cable over that of the pack", "%")
            .with("N", "conductors of it the current passes", "1")
            .with("R_T", "resistance of one conductor, hot", "mΩ")
            .with("I", "current of the pack", "A")
            .with("n", "strings that share it", "1")
            .with("U_n", "nominal voltage", "V")
            .needs("n*U_n > 0*[V]")
            .from(Source.CIRCUITS.clause("Ohm's law"))
            .build();

    static final Formula HEAT = Formula.of("P = N*R_T*(I/n)^2")
            .giving("heat in the cable", "W")
            .with("N", "conductors of it the current passes", "1")
            .with("R_T", "resistance of one conductor, hot", "mΩ")
            .with("I", "current of the pack", "A")
            .with("n", "strings that share it", "1")
            .needs("n > 0")
            .from(Source.CIRCUITS.clause("heat of a current in a resistance"))
            .build();

    /** Where nobody wrote what its conductor may reach: as for cross-linked insulation. */
    private static final Quantity HOT = Quantity.of("90 °C");

    @Override
    public String question() {
        return "How much of the voltage do the cables of the drive take, hot and at the current without end?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Loop drive = Loop.ofDrives(car);
        return Subjects.cables(car).stream()
                .filter(cable -> cable.size() != null && drive.has(cable.id()))
                .flatMap(cable -> Stream.of(
                        Finding.unjudged(
                                cable.id(),
                                filled(DROP, car, drive, cable)
                                        .put("U_n", car.pack().nominalVoltage())
                                        .work()),
                        Finding.unjudged(
                                cable.id() + ", heat",
                                filled(HEAT, car, drive, cable).work())));
    }

    private static Working.Filling filled(Formula formula, Car car, Loop drive, Link cable) {
        int conductors = car.circuit().bonds(cable.id()).size();
        return Working.fill(formula)
                .put("N", Evidence.solved("links[" + cable.id() + "]", "conductors", conductors, "1", "by its ends"))
                .put("R_T", car.conductor(cable).resistance(hot(car.conductor(cable))))
                .put("I", Duty.DRIVE_CONTINUOUS.current(car))
                .put("n", drive.sharing(cable.id()));
    }

    private static Term hot(Conductor conductor) {
        return conductor.link().maxTemperature() == null
                ? Known.exact("", "temperature of the conductor", HOT, Basis.STATED, "taken where none is recorded")
                        .doubted("the highest conductor temperature of "
                                + conductor.link().id() + " is not recorded")
                : conductor.maxTemperature();
    }
}
