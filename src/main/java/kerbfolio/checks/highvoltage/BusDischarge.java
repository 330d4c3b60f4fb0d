package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Discharge;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Label;
import kerbfolio.job.LabelKind;
import kerbfolio.quantity.Unit;

/** A bus that outlives its disconnect bites whoever trusts the key; where it must, a label says so. */
public final class BusDischarge implements Check {
    @Override
    public String question() {
        return "Is every bus dead soon after the car is switched off, or does a label on it say how long to wait?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var discharges = car.discharges(Buses.limit(limits));
        return discharges.isEmpty()
                ? Stream.of(finding("buses", Buses.unrecorded("s"), noLabel(), limits))
                : discharges.stream()
                        .map(discharge -> finding(
                                discharge.bus().toString(),
                                discharge.computed(),
                                label(car, discharge, limits),
                                limits));
    }

    /** A bus that is not shown to be dead in time is judged by its label, if it has one. */
    private static Finding finding(String subject, Term time, Term label, Limits limits) {
        Finding inTime = Finding.judged(subject, time, limits, "bus-discharge");
        Finding labelled = Finding.judged(subject, label, limits, "wait-label");
        return inTime.verdict().clears() || label.amount().isEmpty() ? inTime : labelled;
    }

    /** The label counts if it names at least the wait that is printed. */
    private static Term label(Car car, Discharge discharge, Limits limits) {
        List<Label> labels = car.job().labels();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            if (label.shows() == LabelKind.WAIT_TIME && discharge.bus().has(label.on())) {
                double needed = car.waitFor(Buses.limit(limits)).minutes()
                        * Unit.of("min").factor();
                boolean isLong = label.minutes() == null || label.minutes().si() >= needed;
                String path = "labels[" + i + "]";
                Term seen = Evidence.observed(
                        path,
                        "label with the time to wait, on " + label.on(),
                        label.isThere() && isLong,
                        label.by(),
                        label.date());
                if (label.minutes() == null) {
                    seen = Cases.doubted(seen, "the minutes on the label of " + label.on() + " are not recorded");
                }
                return discharge.computed().amount().isPresent()
                        ? seen
                        : Cases.doubted(seen, "the decay of " + discharge.bus() + " is not known");
            }
        }
        return noLabel();
    }

    private static Term noLabel() {
        return Absent.unrecorded("labels", "label with the time to wait", "1");
    }
}
