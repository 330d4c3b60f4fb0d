package kerbfolio.figure;

import kerbfolio.dossier.Dossier;
import kerbfolio.formula.Term;

/** The direct voltage up to which nothing counts as high, as the home set gives it. */
final class VoltageClass {
    private static final String KEY = "low-voltage";

    private VoltageClass() {}

    static Term term(Dossier dossier) {
        return dossier.limits().term(KEY, "V");
    }

    /** Not known where the home set gives none. */
    static Value of(Dossier dossier) {
        return Value.of(term(dossier), dossier.units());
    }
}
