package kerbfolio.check;

/** What can be said of a figure against its limit. Only {@link #MET} and {@link #NOT_APPLICABLE} clear a gate. */
public enum Verdict {
    MET("met"),
    /** Met, but leaning on something nobody confirmed. */
    MET_UNCONFIRMED("met, unconfirmed"),
    NOT_MET("not met"),
    /** The limit lies within the expanded uncertainty, k = 2. */
    UNDECIDED("undecided"),
    NO_EVIDENCE("no evidence"),
    NOT_APPLICABLE("not applicable"),
    /** A working without a limit: printed, not judged. */
    NO_LIMIT("no limit");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /** Whether a gate that requires this finding has what it needs. */
    public boolean clears() {
        return this == MET || this == NOT_APPLICABLE || this == NO_LIMIT;
    }

    @Override
    public String toString() {
        return words;
    }
}
