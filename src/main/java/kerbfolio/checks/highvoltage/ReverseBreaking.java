package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;

/** Under regeneration and in charge the current runs backward, and a marked contactor opens less of it. */
@Sheet(Sheets.CABLES)
public final class ReverseBreaking implements Check {
    @Override
    public String question() {
        return "Does every contactor open what runs backward through it?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Map<Part, Loop> loops = Loop.ofContactors(car);
        return Subjects.parts(
                "contactors of drive and charge",
                List.copyOf(loops.keySet()),
                limits,
                "reverse-breaking",
                contactor -> Subjects.worst(Stream.of(Duty.REGENERATION, Duty.CHARGE)
                        .map(duty -> CurrentUse.of(
                                contactor.title() + " in " + duty,
                                duty.current(car),
                                Objects.requireNonNull(loops.get(contactor)).sharing(contactor.id()),
                                car.contactor(contactor).reverseBreakingCurrent()))
                        .toList()));
    }
}
