package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Stated;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What the sheet in the window says must be what the scales say. */
public final class StatedMass implements Check {
    @Override
    public String question() {
        return "Do the masses the shop states agree with the scales?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Stated stated = car.job().stated();
        Quantity change = stated == null ? null : stated.massChange();
        Quantity kerbMass = stated == null ? null : stated.kerbMass();
        return Stream.of(
                finding(car, limits, "mass-change", "change of mass", change, car.change()),
                finding(
                        car,
                        limits,
                        "kerb-mass",
                        "kerb mass",
                        kerbMass,
                        car.delivered().total()));
    }

    private static Finding finding(
            Car car, Limits limits, String key, String words, @Nullable Quantity figure, Term computed) {
        Stated stated = car.job().stated();
        Term sheet = car.evidence()
                .rounded("stated." + key, "stated " + words, "kg", figure, stated == null ? null : stated.by());
        return Finding.judged(words, Agreement.of(words, sheet, computed), limits, "stated-mass");
    }
}
