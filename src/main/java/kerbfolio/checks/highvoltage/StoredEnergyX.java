package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** What stays between the poles is what a hand meets once the car is off. */
public final class StoredEnergyX implements Check {
    @Override
    public String question() {
        return "How much energy do the capacitors between the poles of each bus hold?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var discharges = car.discharges(Buses.limit(limits));
        return discharges.isEmpty()
                ? Stream.of(Finding.unjudged("buses", Buses.unrecorded("J")))
                : discharges.stream().flatMap(discharge -> {
                    var capacitors = car.capacitors(discharge.bus());
                    return Stream.of(
                            Finding.unjudged(
                                    discharge.bus() + ", at the highest working voltage",
                                    capacitors.energy(car.pack().highestVoltage())),
                            Finding.unjudged(
                                    discharge.bus() + ", at the voltage limit",
                                    capacitors.energy(Buses.limit(limits))));
                });
    }
}
