package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.MonitorTest;
import kerbfolio.job.Readings;
import kerbfolio.job.Role;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/** A resistor far below the limit makes any monitor warn, one above it should make none: only the narrow window tells. */
@Sheet(Sheets.TOUCH)
public final class MonitorTestResistor implements Check {
    /** R_o inside the window of annex 6 is the same as R_o beside R_i inside 95 to 100 % of the limit. */
    static final Formula FITTED = Formula.of("s = 1/(1/R_o + 1/R_i)/(q*U)")
            .giving("isolation with the resistor over the limit", "%")
            .with("R_o", "resistor fitted", "kΩ")
            .with("R_i", "isolation resistance before it", "kΩ")
            .with("q", "isolation asked for", "Ω/V")
            .with("U", "highest working voltage", "V")
            .needs("R_o > 0*[kΩ]")
            .needs("R_i > 0*[kΩ]")
            .needs("U > 0*[V]")
            .from(Source.UN_R100.clause("annex 6"))
            .build();

    /** Where only a lower bound of R_i is known, the resistor alone is the most the two can come to. */
    static final Formula ALONE = Formula.of("s = R_o/(q*U)")
            .giving("resistor over the limit", "%")
            .with("R_o", "resistor fitted", "kΩ")
            .with("q", "isolation asked for", "Ω/V")
            .with("U", "highest working voltage", "V")
            .needs("U > 0*[V]")
            .from(Source.UN_R100.clause("annex 6, R_i without end"))
            .build();

    private static final String PATH = "readings.isolation-monitor";

    @Override
    public String question() {
        return "Does the isolation monitor warn at the resistor that takes the isolation just below its limit?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Readings readings = car.job().readings();
        MonitorTest test = readings == null ? null : readings.isolationMonitor();
        if (test == null && car.circuit().parts(Role.ISOLATION_MONITOR).isEmpty()) {
            return Stream.empty(); // a battery car need not have one
        }
        Term least = Absent.unrecorded(PATH, "test of the isolation monitor", "%");
        Term most = least;
        Term warned = Absent.unrecorded(PATH + ".warned", "warning of the isolation monitor", "1");
        if (test != null) {
            Optional<Isolation> before = Isolation.of(car, limits).stream()
                    .filter(isolation -> isolation.reading().id().equals(test.isolation()))
                    .findFirst();
            least = fitted(test, before, false, car, limits);
            most = fitted(test, before, true, car, limits);
            warned = Evidence.observed(
                    PATH + ".warned", "warning of the isolation monitor", test.warned(), test.by(), test.date());
        }
        return Stream.of(
                Finding.judged("resistor large enough", least, limits, "isolation-monitor-least"),
                Finding.judged("resistor small enough", most, limits, "isolation-monitor-most"),
                Finding.judged("warning", warned, limits, "isolation-monitor-warning"));
    }

    private static Term fitted(
            MonitorTest test, Optional<Isolation> before, boolean isUpperSide, Car car, Limits limits) {
        if (before.isEmpty()) {
            return Absent.unrecorded(PATH + ".isolation", "isolation reading before the test", "kΩ");
        }
        Isolation isolation = before.get();
        Term limit = limits.term(isolation.key(), "Ω/V");
        Term highest = car.pack().highestVoltage();
        if (isAlreadyBelow(isolation.resistance(), limit, highest)) {
            return new Absent(
                    PATH,
                    "test of the isolation monitor",
                    Unit.of("%"),
                    "the isolation is already below the limit, so the monitor warns without a resistor");
        }
        Term resistor = car.evidence()
                .measured(
                        PATH + ".resistor",
                        "resistor at the isolation monitor",
                        "kΩ",
                        test.resistor(),
                        test.instrument(),
                        test.date());
        boolean isAlone = isUpperSide && isolation.isLowerBound();
        Working.Filling filling = Working.fill(isAlone ? ALONE : FITTED)
                .put("R_o", resistor)
                .put("q", limit)
                .put("U", highest);
        return (isAlone ? filling : filling.put("R_i", isolation.resistance())).work();
    }

    private static boolean isAlreadyBelow(Term resistance, Term limit, Term highest) {
        return resistance.amount().isPresent()
                && limit.amount().isPresent()
                && highest.amount().isPresent()
                && resistance.amount().get().si()
                        <= limit.amount().get().si() * highest.amount().get().si();
    }
}
