package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/** Anything agrees with anything if both are known badly enough: the agreement counts only while its doubt is small. */
public final class LedgerDoubt implements Check {
    static final Formula DOUBT = Formula.of("d = U_r/m")
            .giving("doubt of the agreement over the mass of the car", "%")
            .with("U_r", "expanded uncertainty of scales less ledger, k = 2", "kg")
            .with("m", "mass of the car", "kg")
            .needs("m > 0*[kg]")
            .from(Source.OWN_RULE.whole())
            .build();

    @Override
    public String question() {
        return "Is the ledger known well enough for its agreement to mean something?";
    }

    /** None of its own: it holds where the tier asks for the ledger, and nowhere else. */
    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Term result = LedgerClosure.obstacle(car, "doubt of the closure", Unit.of("%"))
                .orElseGet(() -> doubt(car));
        return Stream.of(Finding.judged("whole car", result, limits, "ledger-doubt"));
    }

    private static Working doubt(Car car) {
        Working difference =
                Agreement.difference("whole car", car.change(), car.ledger().change());
        return Working.fill(DOUBT)
                .put("U_r", difference.doubt())
                .put("m", car.delivered().total())
                .work();
    }
}
