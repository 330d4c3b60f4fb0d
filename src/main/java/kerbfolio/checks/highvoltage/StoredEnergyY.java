package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit.Bus;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Role;
import kerbfolio.source.Source;

/** Capacitors to the chassis shock whoever touches one pole and the car, whatever the isolation resistance. */
public final class StoredEnergyY implements Check {
    static final Formula ENERGY = Formula.of("E = sum(c)*U^2/2")
            .giving("energy between one pole and the chassis", "J")
            .each("c", "capacitance of a part from one pole to the chassis", "µF")
            .with("U", "highest working voltage", "V")
            .from(Source.UN_R94.clause("Annex 11, energy of the Y capacitors"))
            .build();

    @Override
    public String question() {
        return "How much energy do the capacitors between one pole and the chassis hold at most?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Bus> buses = car.circuit().isRecorded() ? car.circuit().buses(List.of()) : List.of();
        return buses.isEmpty()
                ? Stream.of(Finding.judged("buses", Buses.unrecorded("J"), limits, "stored-energy-y"))
                : buses.stream()
                        .map(bus -> Finding.judged(bus.toString(), energy(car, bus), limits, "stored-energy-y"));
    }

    /** All parts of a bus hang on the same rail. A box of cells counts where somebody recorded what it has. */
    private static Working energy(Car car, Bus bus) {
        var capacitances = new ArrayList<Term>();
        bus.parts().forEach(part -> capacitances.add(car.nameplate(part).yCapacitance()));
        car.circuit().parts(Role.BATTERY).stream()
                .map(box -> car.nameplate(box).yCapacitance())
                .filter(term -> term.amount().isPresent())
                .forEach(capacitances::add);
        return Working.fill(ENERGY)
                .each("c", capacitances)
                .put("U", car.pack().highestVoltage())
                .work();
    }
}
