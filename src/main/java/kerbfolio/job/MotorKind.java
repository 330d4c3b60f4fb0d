package kerbfolio.job;

/** Whether a motor that is turned makes a voltage by itself. */
public enum MotorKind {
    MAGNET("magnet"),
    INDUCTION("induction"),
    WOUND_FIELD("wound-field"),
    RELUCTANCE("reluctance");

    private final String key;

    MotorKind(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
