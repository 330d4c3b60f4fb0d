package kerbfolio.formula;

/** How a figure came to be known; the page always says which. */
public enum Basis {
    MEASURED("measured"),
    COMPUTED("computed"),
    OBSERVED("observed"),
    STATED("stated"),
    /** Required by a regulation or a rule: a limit. */
    REQUIRED("required"),
    /** Found by a solver; its proof is printed as two sides compared. */
    SOLVED("solved"),
    ABSENT("not recorded");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    @Override
    public String toString() {
        return word;
    }
}
