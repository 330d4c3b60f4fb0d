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
import kerbfolio.job.Part;
import kerbfolio.source.Source;

/** A pre-charge resistor turns as much into heat as the capacitors come to hold. */
public final class PrechargeEnergy implements Check {
    static final Formula USE = Formula.of("u = E/E_R")
            .giving("energy of one filling over what the resistor takes in one pulse", "%")
            .with("E", "energy in the capacitors, which the resistor takes as well", "J")
            .with("E_R", "energy the resistor takes in one pulse", "J")
            .needs("E_R > 0*[J]")
            .from(Source.CIRCUITS.clause("charge of a capacitor through a resistance"))
            .build();

    @Override
    public String question() {
        return "Does the pre-charge resistor bear the energy of one filling?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Filling filling = car.filling();
        Working use = Working.fill(USE)
                .put("E", filling.energy(car.pack().highestVoltage()))
                .put("E_R", filling.pulseEnergy())
                .work();
        return Stream.of(Finding.judged(
                filling.resistor().map(Part::id).orElse("pre-charge resistor"), use, limits, "precharge-energy"));
    }
}
