package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;

/** A good reading with the inverter unplugged says nothing of the inverter. */
@Sheet(Sheets.TOUCH)
public final class IsolationCoverage implements Check {
    @Override
    public String question() {
        return "Was every high-voltage part joined to the circuit when its isolation was measured?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public boolean isWaivable() {
        return false;
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Isolation> recorded = Isolation.of(car, limits);
        List<Isolation> usable = recorded.stream()
                .filter(isolation -> isolation.finding(car, limits).verdict() != Verdict.NO_EVIDENCE)
                .toList();
        List<Finding> findings = car.circuit().parts().stream()
                .filter(part -> !Cases.isEnclosed(part, car))
                .map(part -> Finding.judged(
                        part.id(),
                        recorded.isEmpty()
                                ? Absent.unrecorded("readings.isolation", "isolation of the circuit", "1")
                                : readings(part, usable),
                        limits,
                        "isolation-coverage"))
                .toList();
        return Cases.orAsk(findings, "parts", "high-voltage parts", limits, "isolation-coverage");
    }

    private static Term readings(Part part, List<Isolation> usable) {
        List<String> ids = usable.stream()
                .map(Isolation::reading)
                .filter(reading -> reading.joined().contains(part.id()))
                .map(reading -> reading.id())
                .toList();
        return Evidence.solved(
                "parts[" + part.id() + "]",
                "isolation readings with " + part.id() + " joined",
                ids.size(),
                "1",
                ids.isEmpty() ? "joined in no reading that can be used" : String.join(", ", ids));
    }
}
