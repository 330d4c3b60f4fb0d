package kerbfolio.formula;

import java.util.List;
import java.util.Optional;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/**
 * A figure that is needed and not there. It is never taken for a default.
 *
 * @param path where it would stand in the job file
 * @param name what it is, in shop words
 * @param unit the unit it would be given in
 * @param reason why it cannot be used
 */
public record Absent(String path, String name, Unit unit, String reason) implements Term {
    /** The reason of a figure nobody wrote. */
    public static final String UNRECORDED = "not recorded";

    public static Absent unrecorded(String path, String name, String unit) {
        return new Absent(path, name, Unit.of(unit), UNRECORDED);
    }

    /** Whether nobody wrote anything there, so that a number is all it takes. */
    public boolean isUnrecorded() {
        return reason.equals(UNRECORDED);
    }

    @Override
    public Optional<Amount> amount() {
        return Optional.empty();
    }

    @Override
    public Basis basis() {
        return Basis.ABSENT;
    }

    @Override
    public String origin() {
        return reason;
    }

    @Override
    public List<String> reservations() {
        return List.of();
    }

    @Override
    public List<Absent> missing() {
        return List.of(this);
    }
}
