package kerbfolio.quantity;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The two systems a dossier speaks: the job's own stands large, the other small. */
public enum UnitSystem {
    SI,
    US;

    /** SI unit and its US counterpart, in the sizes a workshop reads. */
    private static final List<Map.Entry<Unit, Unit>> PAIRS = List.of(
            pair("kg", "lb"),
            pair("mm", "in"),
            pair("m", "ft"),
            pair("km", "mi"),
            pair("km/h", "mph"),
            pair("N·m", "lbf·ft"),
            pair("N", "lbf"),
            pair("N/mm", "lbf/in"),
            pair("L", "gal"),
            pair("bar", "psi"),
            pair("kW", "hp"),
            pair("°C", "°F"));

    private static Map.Entry<Unit, Unit> pair(String si, String us) {
        return Map.entry(Unit.of(si), Unit.of(us));
    }

    /** The unit a figure is printed in, in this system; the unit itself if both systems share it. */
    public Unit of(Unit unit) {
        return counterpart(unit, this).orElse(unit);
    }

    /** The unit of the other system, if the two differ for this kind of figure. */
    public Optional<Unit> otherThan(Unit unit) {
        return counterpart(unit, this == SI ? US : SI).filter(other -> !other.equals(of(unit)));
    }

    private static Optional<Unit> counterpart(Unit unit, UnitSystem system) {
        for (var pair : PAIRS) {
            if (pair.getKey().text().equals(unit.text())
                    || pair.getValue().text().equals(unit.text())) {
                return Optional.of(system == SI ? pair.getKey() : pair.getValue());
            }
        }
        return Optional.empty();
    }
}
