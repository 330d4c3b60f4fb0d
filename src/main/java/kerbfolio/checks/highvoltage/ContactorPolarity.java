package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.ContactorPlate;
import kerbfolio.car.Evidence;
import kerbfolio.car.Terminal;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.quantity.Unit;

/** A marked contactor that is fitted the wrong way round draws its arc into its own case. */
@Sheet(Sheets.CABLES)
public final class ContactorPolarity implements Check {
    @Override
    public String question() {
        return "Does the marked terminal of every contactor face the way the drive current comes from?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Subjects.parts(
                "contactors",
                car.circuit().contactors(),
                limits,
                "contactor-polarity",
                contactor -> faces(car, contactor));
    }

    private static Term faces(Car car, Part contactor) {
        String path = "parts[" + contactor.id() + "].contactor.";
        String name = "plus terminal of " + contactor.title() + " as the current runs";
        ContactorPlate plate = car.contactor(contactor);
        if (plate.isPolarised().isEmpty()) {
            return plate.reverseBreakingCurrent();
        }
        if (!plate.isPolarised().get()) {
            return Evidence.solved(path + "polarised", name, 1, "1", "its maker marks no polarity");
        }
        return plate.plusTerminal()
                .map(plus -> faces(car, contactor, plus, path, name))
                .orElseGet(
                        () -> Absent.unrecorded(path + "plus-terminal", "plus terminal of " + contactor.title(), "1"));
    }

    /** Drive current leaves a box at its plus pole and comes back at its minus pole; it enters at the marked terminal. */
    private static Term faces(Car car, Part contactor, Terminal plus, String path, String name) {
        Set<String> marked = poles(car, plus);
        Set<String> other = car.circuit().terminals(contactor.id()).stream()
                .filter(terminal -> !terminal.equals(plus))
                .flatMap(terminal -> poles(car, terminal).stream())
                .collect(Collectors.toSet());
        boolean isRight = marked.contains("+") || other.contains("-");
        boolean isWrong = marked.contains("-") || other.contains("+");
        if (isRight == isWrong) {
            return new Absent(
                    path + "plus-terminal",
                    name,
                    Unit.ONE,
                    "the links do not say which side of it a box of cells is on");
        }
        return Evidence.solved(
                path + "plus-terminal",
                name,
                isRight ? 1 : 0,
                "1",
                isRight ? "at " + plus : "the wrong way round: at " + plus);
    }

    /** Poles of boxes a terminal is joined to with every contactor open. */
    private static Set<String> poles(Car car, Terminal terminal) {
        return car
                .circuit()
                .net(terminal, car.circuit().contactors().stream().map(Part::id).toList())
                .stream()
                .filter(at -> car.circuit()
                        .part(at.part())
                        .map(part -> part.role() == Role.BATTERY)
                        .orElse(false))
                .map(Terminal::name)
                .collect(Collectors.toSet());
    }
}
