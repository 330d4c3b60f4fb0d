package kerbfolio.job;

/** What the battery monitor does at a limit. */
public enum Action {
    NONE("none"),
    WARN("warn"),
    REDUCE("reduce"),
    STOP_CHARGE("stop-charge"),
    STOP_DRIVE("stop-drive"),
    OPEN_CONTACTORS("open-contactors");

    private final String key;

    Action(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
