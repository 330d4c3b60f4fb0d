package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Gate;
import kerbfolio.job.IsolationMethod;
import kerbfolio.job.Readings;

/** A monitor shows both rails in parallel, a voltmeter the lower one: the two figures differ though both are right. */
@Sheet(Sheets.TOUCH)
public final class MonitorDisplayValue implements Check {
    @Override
    public String question() {
        return "What would an isolation monitor have shown while the voltmeter was read?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Readings readings = car.job().readings();
        return readings == null
                ? Stream.empty()
                : readings.isolation().stream()
                        .filter(reading -> reading.method() == IsolationMethod.VOLTMETER)
                        .map(reading ->
                                Finding.unjudged(reading.id(), new VoltmeterIsolation(reading, car).parallel(limits)));
    }
}
