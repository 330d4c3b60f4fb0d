package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.LiveParts;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** Whoever pulls a service disconnect believes that what lies beyond it is dead; this names what is not. */
public final class StayLive implements Check {
    private static final String KEY = "low-voltage";

    @Override
    public String question() {
        return "Is every part dead between its poles with a disconnect out and every contactor welded closed?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Subjects.ofCircuit(car, "V", limits, KEY, circuit -> of(circuit, car, limits));
    }

    private static Stream<Finding> of(Circuit circuit, Car car, Limits limits) {
        if (circuit.disconnects().isEmpty()) {
            Term disconnect = Absent.unrecorded("parts", "a service disconnect", "V");
            return Stream.of(Finding.judged("service disconnect", disconnect, limits, KEY));
        }
        return circuit.disconnects().stream().flatMap(disconnect -> {
            LiveParts live = car.liveParts(List.of(disconnect.id()));
            return circuit.parts().stream()
                    .filter(LiveParts::isConsumer)
                    .map(part -> Finding.judged(
                            part.id() + ", " + disconnect.id() + " out", left(car, live, part, limits), limits, KEY));
        });
    }

    /** What the boxes of cells leave on a part; where that is little, what it may bring back by itself. */
    private static Term left(Car car, LiveParts live, Part part, Limits limits) {
        Term byBoxes = live.betweenPoles(part);
        Verdict verdict = limits.find(KEY).map(limit -> limit.judge(byBoxes)).orElse(Verdict.NO_LIMIT);
        Boolean feedsBack = part.electrical() == null ? null : part.electrical().feedsBack();
        if (verdict == Verdict.NOT_MET || verdict == Verdict.NO_EVIDENCE || Boolean.FALSE.equals(feedsBack)) {
            return byBoxes;
        }
        if (Boolean.TRUE.equals(feedsBack)) {
            return car.pack().highestVoltage();
        }
        return part.role() == Role.CONVERTER || part.role() == Role.CHARGER
                ? Absent.unrecorded(
                        "parts[" + part.id() + "].electrical.feeds-back",
                        "whether " + part.title() + " can bring voltage back",
                        "V")
                : byBoxes;
    }
}
