package kerbfolio.job;

/** What an open item of the punch list holds. */
public enum Hold {
    TRANSPORT("transport"),
    ENERGISE("energise"),
    INSPECTION("inspection"),
    ROAD("road"),
    NONE("none");

    private final String key;

    Hold(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
