package kerbfolio.checks.weight;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** A plate whose axles together carry less than its gross mass was misread or changed. */
public final class AxleRatingSum implements Check {
    static final Formula EXCESS = Formula.of("M = R_F + R_R - R")
            .giving("axle masses beyond the gross mass", "kg")
            .with("R_F", "permitted front axle mass", "kg")
            .with("R_R", "permitted rear axle mass", "kg")
            .with("R", "permitted gross mass", "kg")
            .from(Source.STATICS.clause("difference of two masses"))
            .build();

    @Override
    public String question() {
        return "Do the permitted axle masses together cover the permitted gross mass?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Working excess = Working.fill(EXCESS)
                .put("R_F", car.rating(Axle.FRONT))
                .put("R_R", car.rating(Axle.REAR))
                .put("R", car.grossRating())
                .work();
        return Stream.of(Finding.judged("plate", excess, limits, "axle-rating-sum"));
    }
}
