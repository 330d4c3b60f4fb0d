package kerbfolio.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;

/**
 * A figure somebody wrote down.
 *
 * @param path where it stands in the job file, or in the document it is taken from
 * @param name what it is, in shop words
 * @param quantity exactly as written
 * @param value the value with its causes of doubt
 * @param basis measured, observed, stated, required or solved
 * @param origin instrument and date, or who stated it
 * @param reservations why it may hold but not clear
 */
public record Known(
        String path,
        String name,
        Quantity quantity,
        Amount value,
        Basis basis,
        String origin,
        List<String> reservations)
        implements Term {
    public Known {
        reservations = List.copyOf(reservations);
    }

    /** A figure taken as exact, such as a rating or a count. */
    public static Known exact(String path, String name, Quantity quantity, Basis basis, String origin) {
        return new Known(path, name, quantity, Amount.exact(quantity.si()), basis, origin, List.of());
    }

    /** The same with one more reason why it may hold and not clear. */
    public Known doubted(String reservation) {
        var all = new ArrayList<>(reservations);
        all.add(reservation);
        return new Known(path, name, quantity, value, basis, origin, all);
    }

    @Override
    public Unit unit() {
        return quantity.unit();
    }

    @Override
    public Optional<Amount> amount() {
        return Optional.of(value);
    }

    @Override
    public List<Absent> missing() {
        return List.of();
    }

    /** Whether somebody wrote the figure down; what was solved has digits without end. */
    public boolean isWritten() {
        return basis != Basis.SOLVED;
    }
}
