package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit.Bus;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Label;
import kerbfolio.job.LabelKind;

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
                                label(car.job().labels(), discharge.bus()),
                                limits));
    }

    /** A bus that is not shown to be dead in time is judged by its label, if it has one. */
    private static Finding finding(String subject, Term time, Term label, Limits limits) {
        Finding inTime = Finding.judged(subject, time, limits, "bus-discharge");
        Finding labelled = Finding.judged(subject, label, limits, "wait-label");
        return inTime.verdict().clears() || label.amount().isEmpty() ? inTime : labelled;
    }

    private static Term label(List<Label> labels, Bus bus) {
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            if (label.shows() == LabelKind.WAIT_TIME && bus.has(label.on())) {
                return Evidence.observed(
                        "labels[" + i + "]",
                        "label with the time to wait, on " + label.on(),
                        true,
                        label.by(),
                        label.date());
            }
        }
        return noLabel();
    }

    private static Term noLabel() {
        return Absent.unrecorded("labels", "label with the time to wait", "1");
    }
}
