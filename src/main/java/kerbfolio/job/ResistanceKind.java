package kerbfolio.job;

/** How a resistance was found: from the step of voltage at once, or after seconds of current. */
public enum ResistanceKind {
    OHMIC("ohmic"),
    PULSE("pulse");

    private final String key;

    ResistanceKind(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
