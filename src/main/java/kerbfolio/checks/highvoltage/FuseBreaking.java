package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.source.Source;

/** A short circuit beyond its breaking capacity bursts a fuse and goes on. */
@Sheet(Sheets.CABLES)
public final class FuseBreaking implements Check {
    static final Formula USE = Formula.of("u = I_p/I_b")
            .giving("use of the breaking capacity", "%")
            .with("I_p", "prospective short-circuit current", "kA")
            .with("I_b", "breaking capacity", "kA")
            .needs("I_b > 0*[kA]")
            .from(Source.CIRCUITS.clause("share of a rating"))
            .build();

    @Override
    public String question() {
        return "Does every fuse break the largest short-circuit current of the pack?";
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
        Optional<Limit> near = limits.find("fuse-breaking-untested");
        return Subjects.parts(
                "fuses", car.circuit().parts(Role.FUSE), limits, "fuse-breaking", fuse -> use(car, fuse, near));
    }

    /** Near its breaking capacity only a test shows that a fuse breaks: such a figure holds and does not clear. */
    private static Working use(Car car, Part fuse, Optional<Limit> near) {
        Term capacity = car.fuse(fuse).breakingCapacity();
        Working use = use(car, capacity);
        boolean isNear = near.map(limit -> limit.judge(use) == Verdict.NOT_MET).orElse(false);
        return isNear && capacity instanceof Known known
                ? use(
                        car,
                        known.doubted("the short-circuit current is near the breaking capacity of " + fuse.title()
                                + "; only a test proves that it breaks"))
                : use;
    }

    private static Working use(Car car, Term capacity) {
        return Working.fill(USE)
                .put("I_p", car.prospectiveCurrent())
                .put("I_b", capacity)
                .work();
    }
}
