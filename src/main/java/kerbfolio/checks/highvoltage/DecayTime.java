package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.job.Gate;

/** The time a mechanic waits begins with the time a bus needs by itself. */
public final class DecayTime implements Check {
    @Override
    public String question() {
        return "How long does each bus take by itself from the highest working voltage down to the voltage limit?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var discharges = car.discharges(Buses.limit(limits));
        return discharges.isEmpty()
                ? Stream.of(Finding.unjudged("buses", Buses.unrecorded("s")))
                : discharges.stream()
                        .map(discharge -> Finding.unjudged(discharge.bus().toString(), discharge.computed()));
    }
}
