package kerbfolio.release;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Trade;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;

/** A check of one finding, whose figure a test chooses; the rule of {@link Gates} is that it is at least 0 kg. */
record Stub(String id, Optional<Gate> gate, String key, Term result, boolean isWaivable) implements Check {
    static final Term MET = figure(10, 1);
    static final Term NOT_MET = figure(-10, 1);
    static final Term UNDECIDED = figure(0, 1);
    static final Term UNCONFIRMED = figure(10, 1, "scales were out of calibration");
    static final Term ABSENT = Absent.unrecorded("there", "margin", "kg");

    private static Term figure(double kilograms, double expanded, String... reservations) {
        return new Known(
                "here",
                "margin",
                Quantity.of(kilograms + " kg"),
                new Amount(kilograms, Map.of("scales", expanded / 2)),
                Basis.MEASURED,
                "scales",
                List.of(reservations));
    }

    static Stub stub(String id, Gate gate, Term result) {
        return new Stub(id, Optional.of(gate), "margin", result, true);
    }

    /** A working: it holds no gate and has no limit. */
    static Stub working(String id, Term result) {
        return new Stub(id, Optional.empty(), "no-such-key", result, true);
    }

    Stub unlimited() {
        return new Stub(id, gate, "no-such-key", result, isWaivable);
    }

    Stub unwaivable() {
        return new Stub(id, gate, key, result, false);
    }

    @Override
    public String question() {
        return "Is it?";
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        return Stream.of(Finding.judged("car", result, limits, key));
    }

    @Override
    public Trade trade() {
        return Trade.WEIGHT;
    }
}
