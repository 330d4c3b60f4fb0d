package kerbfolio.formula;

import java.util.List;
import java.util.Optional;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/** Anything that can stand for a symbol: a reading, a stated figure, a limit, or the result of another working. */
public interface Term {
    /** What it is, in shop words. */
    String name();

    /** The unit it was written in or is given in. */
    Unit unit();

    /** The value with its causes of doubt; empty if it is not known. */
    Optional<Amount> amount();

    Basis basis();

    /** Instrument and date, who stated it, the clause, the formula's meaning, or why it is absent. */
    String origin();

    /** Why this figure may hold a gate but not clear one: a fallback, an unconfirmed limit, an instrument out of date. */
    List<String> reservations();

    /** The figures that would have to be recorded before this one is known. */
    List<Absent> missing();
}
