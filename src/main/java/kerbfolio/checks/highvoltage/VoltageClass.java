package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;

/** The class is decided by full cells, not by the nominal voltage: 15 cells of 3.6 V are 54 V, and 63 V when full. */
public final class VoltageClass implements Check {
    @Override
    public String question() {
        return "What voltage class is the pack when full, and is it within what the rules speak of?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Working highest = car.pack().highestVoltage();
        String subject = limits.find("low-voltage")
                .map(limit -> "pack" + named(limit, highest))
                .orElse("pack");
        return Stream.of(Finding.judged(subject, highest, limits, "voltage-class"));
    }

    /** What is not clearly low voltage is treated as high. */
    private static String named(Limit limit, Working highest) {
        Verdict low = limit.judge(highest);
        if (low == Verdict.NO_EVIDENCE) {
            return "";
        }
        boolean isLow = low == Verdict.MET || low == Verdict.MET_UNCONFIRMED;
        return (isLow ? ", class A, at most " : ", class B, over ") + limit.value();
    }
}
