package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Charging;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** A charge runs for hours, and a breaker sized for minutes trips or cooks. */
@Sheet(Sheets.BATTERY)
public final class SupplyCurrent implements Check {
    static final Formula RATIO = Formula.of("k = I_b/I")
            .giving("breaker over the current of the charge", "%")
            .with("I_b", "rated current of the supply's breaker", "A")
            .with("I", "current of the charge", "A")
            .needs("I > 0*[A]")
            .from(Source.CIRCUITS.clause("ratio of two currents"))
            .build();

    @Override
    public String question() {
        return "Is the breaker of the supply large enough for a charge without end?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Charging charging = car.charging();
        return charging.chargers().isEmpty()
                ? Stream.of(finding("charger", charging.breaker(), charging.pilotCurrent(), limits))
                : charging.chargers().stream()
                        .map(part -> finding(part.id(), charging.breaker(), charging.current(part), limits));
    }

    private static Finding finding(String subject, Term breaker, Term current, Limits limits) {
        return Finding.judged(
                subject,
                Working.fill(RATIO).put("I_b", breaker).put("I", current).work(),
                limits,
                "supply-current");
    }
}
