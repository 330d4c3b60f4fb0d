package kerbfolio.job;

/** How much of the job file a shop undertakes to fill; declared, never inferred. */
public enum Tier {
    FIRST("first"),
    INSPECTION("inspection"),
    FULL("full");

    private final String key;

    Tier(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
