package kerbfolio.formula;

import java.util.List;
import kerbfolio.quantity.Unit;

/**
 * One way of reading a formula, from its leaves up.
 *
 * @param <T> what the reading makes of each part
 */
interface Fold<T> {
    T number(String digits);

    T unit(Unit unit);

    T symbol(String name);

    /** An operator with the readings of its operands; {@code at} is the written place, for rules that look at it. */
    T apply(Op op, List<T> operands, Node.Apply at);
}
