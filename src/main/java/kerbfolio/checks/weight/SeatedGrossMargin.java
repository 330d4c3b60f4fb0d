package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** Every seat is an invitation. */
public final class SeatedGrossMargin implements Check {
    static final Formula SEATED = Formula.of("m_s = m + n*m_p")
            .giving("mass with every seat taken", "kg")
            .with("m", "mass of the car", "kg")
            .with("n", "seats", "1")
            .with("m_p", "mass of one occupant", "kg")
            .from(Source.STATICS.clause("conservation of mass"))
            .build();

    @Override
    public String question() {
        return "Is the car with somebody in every seat within its permitted gross mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var vehicle = car.job().vehicle();
        Working seated = Working.fill(SEATED)
                .put("m", car.delivered().total())
                .put(
                        "n",
                        car.evidence()
                                .stated(
                                        "vehicle.seats",
                                        "seats",
                                        "1",
                                        vehicle == null ? null : vehicle.seats(),
                                        car.job().job().preparedBy()))
                .put("m_p", limits.term("occupant-mass", "kg"))
                .work();
        return Stream.of(
                Finding.judged("every seat taken", Margin.of(car.grossRating(), seated), limits, "gross-margin"));
    }
}
