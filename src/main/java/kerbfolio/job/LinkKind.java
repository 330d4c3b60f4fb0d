package kerbfolio.job;

/** What a link carries. */
public enum LinkKind {
    HIGH_VOLTAGE("high-voltage"),
    BUSBAR("busbar"),
    PHASE("phase"),
    CHARGE("charge"),
    INTERLOCK("interlock"),
    LOW_VOLTAGE("low-voltage"),
    EARTH_STRAP("earth-strap"),
    HOSE("hose"),
    BRAKE_LINE("brake-line"),
    SHAFT("shaft"),
    MOUNT("mount");

    private final String key;

    LinkKind(String key) {
        this.key = key;
    }

    /** Whether it is a conductor of the direct-current circuit. */
    public boolean isTraction() {
        return this == HIGH_VOLTAGE || this == BUSBAR;
    }

    /** Whether it is a cable that carries traction or mains voltage. */
    public boolean isCable() {
        return this == HIGH_VOLTAGE || this == PHASE || this == CHARGE;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
