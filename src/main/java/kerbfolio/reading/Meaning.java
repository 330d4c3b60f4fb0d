package kerbfolio.reading;

/** What the values of a file must mean together: ids that exist, days in order. */
@FunctionalInterface
public interface Meaning<T> {
    /**
     * Examines a whole file. A key the reader could not read, and has complained of, stands in as absent, or as an
     * empty text or the last of all days where it may not be absent.
     */
    void examine(T value, ComplaintBook complaints);
}
