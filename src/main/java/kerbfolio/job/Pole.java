package kerbfolio.job;

/** A pole of the traction circuit. */
public enum Pole {
    PLUS("plus"),
    MINUS("minus"),
    BOTH("both");

    private final String key;

    Pole(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
