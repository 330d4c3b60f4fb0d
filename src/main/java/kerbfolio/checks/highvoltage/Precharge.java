package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Filling;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** A main contactor that closes on an empty bus welds. */
public final class Precharge implements Check {
    static final Formula FRACTION = Formula.of("q = 1 - exp(-t/(R*C))")
            .giving("share of the pack's voltage the bus has reached", "%")
            .with("t", "time until the main contactor closes", "s")
            .with("R", "resistance of the pre-charge resistor", "Ω")
            .with("C", "capacitance it fills", "µF")
            .needs("R > 0*[Ω]")
            .needs("C > 0*[µF]")
            .from(Source.CIRCUITS.clause("charge of a capacitor through a resistance"))
            .build();

    @Override
    public String question() {
        return "Has the bus nearly the voltage of the pack when the main contactor closes?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Filling filling = car.filling();
        Working fraction = Working.fill(FRACTION)
                .named(
                        filling.isByVoltage()
                                ? "share reached in the time set, though the contactor waits for the voltage of the bus"
                                : "share reached in the time set, which alone closes the contactor")
                .put("t", filling.time())
                .put("R", filling.resistance())
                .put("C", filling.capacitance())
                .work();
        String subject =
                filling.isByVoltage() ? "by the time set; the bus voltage closes the contactor" : "by the time set";
        return Stream.of(Finding.judged(subject, fraction, limits, "precharge"));
    }
}
