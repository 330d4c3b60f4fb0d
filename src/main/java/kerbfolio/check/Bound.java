package kerbfolio.check;

/** On which side of its value a limit allows. */
public enum Bound {
    AT_MOST("at most", "≤"),
    BELOW("below", "<"),
    AT_LEAST("at least", "≥"),
    ABOVE("above", ">");

    private final String key;
    private final String sign;

    Bound(String key, String sign) {
        this.key = key;
        this.sign = sign;
    }

    public String sign() {
        return sign;
    }

    /** Whether the allowed side is the lower one. */
    public boolean isCeiling() {
        return this == AT_MOST || this == BELOW;
    }

    /** Whether the value itself is allowed. */
    boolean allowsEqual() {
        return this == AT_MOST || this == AT_LEAST;
    }

    /** As it is written in a requirement set and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
