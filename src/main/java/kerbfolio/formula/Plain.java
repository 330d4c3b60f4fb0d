package kerbfolio.formula;

import java.util.List;
import java.util.Optional;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/**
 * A term without its causes of doubt, for a formula that divides by that very doubt: counted once, not twice.
 *
 * @param of the term itself
 */
public record Plain(Term of) implements Term {
    @Override
    public String name() {
        return of.name();
    }

    @Override
    public Unit unit() {
        return of.unit();
    }

    @Override
    public Optional<Amount> amount() {
        return of.amount().map(amount -> Amount.exact(amount.si()));
    }

    @Override
    public Basis basis() {
        return of.basis();
    }

    @Override
    public String origin() {
        return of.origin();
    }

    @Override
    public List<String> reservations() {
        return of.reservations();
    }

    @Override
    public List<Absent> missing() {
        return of.missing();
    }
}
