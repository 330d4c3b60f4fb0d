package kerbfolio.job;

/** What it takes to open something. */
public enum Opening {
    HAND("hand"),
    TOOL("tool");

    private final String key;

    Opening(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
