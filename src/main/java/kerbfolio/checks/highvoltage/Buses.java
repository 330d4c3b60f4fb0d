package kerbfolio.checks.highvoltage;

import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;

/** The buses of a car as the checks of its capacitors ask for them. */
final class Buses {
    /** The voltage at which a bus counts as dead. */
    static final String LIMIT = "low-voltage";

    private Buses() {}

    static Term limit(Limits limits) {
        return limits.term(LIMIT, "V");
    }

    /** What stands for a bus where nobody recorded one. */
    static Term unrecorded(String unit) {
        return Absent.unrecorded("links", "what joins the parts of the high-voltage circuit", unit);
    }
}
