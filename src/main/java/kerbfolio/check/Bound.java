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

    /**
     * Judges a figure: decided only if its whole expanded uncertainty lies on one side of the limit.
     *
     * @param dust a difference that is none
     */
    public Verdict judge(double value, double expanded, double limit, double dust) {
        double inside = isCeiling() ? limit - value : value - limit;
        if (allows(inside - expanded, dust)) {
            return Verdict.MET;
        }
        return allows(inside + expanded, dust) ? Verdict.UNDECIDED : Verdict.NOT_MET;
    }

    private boolean allows(double inside, double dust) {
        boolean equal = this == AT_MOST || this == AT_LEAST;
        return equal ? inside >= -dust : inside > dust;
    }

    /** As it is written in a requirement set and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
