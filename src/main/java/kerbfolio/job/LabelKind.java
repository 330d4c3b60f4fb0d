package kerbfolio.job;

/** What a label says. */
public enum LabelKind {
    WARNING_SYMBOL("warning-symbol"),
    ORANGE_COVER("orange-cover"),
    WAIT_TIME("wait-time"),
    DISCONNECT("disconnect"),
    CUT_HERE("cut-here");

    private final String key;

    LabelKind(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
