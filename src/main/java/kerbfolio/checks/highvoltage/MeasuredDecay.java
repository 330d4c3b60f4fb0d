package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/** A capacitor the data sheets forgot shows in the time; the longer of the two sets the wait, so this holds no gate. */
public final class MeasuredDecay implements Check {
    static final Formula DIFFERENCE = Formula.of("r = t_r - t_c")
            .giving("difference of the times", "s")
            .with("t_r", "time as read", "s")
            .with("t_c", "time computed", "s")
            .from(Source.CIRCUITS.clause("discharge of a capacitor through a resistance"))
            .build();

    static final Formula NUMBER = Formula.of("E = abs(r)/U_r")
            .giving("difference over its expanded uncertainty", "1")
            .with("r", "difference of the times", "s")
            .with("U_r", "expanded uncertainty of the difference, k = 2", "s")
            .needs("U_r > 0*[s]")
            .from(Source.ISO_13528.clause("9.7, En score (clause from memory)"))
            .build();

    @Override
    public String question() {
        return "Does the decay of each bus as read agree with the one computed?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Term limit = Buses.limit(limits);
        var discharges = car.discharges(limit);
        var readings = car.decayReadings(limit);
        return readings.isEmpty()
                ? Stream.of(finding(
                        "decay of the bus",
                        Absent.unrecorded("readings.decay", "two voltages of a bus that is left alone", "s"),
                        limits))
                : readings.stream()
                        .map(reading -> finding(
                                reading.name(),
                                discharges.stream()
                                        .filter(discharge -> discharge.bus().has(reading.of()))
                                        .findFirst()
                                        .<Term>map(discharge -> number(reading.time(), discharge.computed()))
                                        .orElseGet(() -> offBus(reading.of())),
                                limits));
    }

    private static Finding finding(String subject, Term result, Limits limits) {
        return Finding.judged(subject, result, limits, "decay-agreement");
    }

    private static Working number(Term read, Term computed) {
        Working difference =
                Working.fill(DIFFERENCE).put("t_r", read).put("t_c", computed).work();
        return Working.fill(NUMBER)
                .put("r", new Plain(difference))
                .put("U_r", difference.doubt())
                .work();
    }

    private static Term offBus(String part) {
        return new Absent("readings.decay", "bus of " + part, Unit.of("s"), "`" + part + "` is on no bus");
    }
}
