package kerbfolio.car;

import kerbfolio.job.Pole;

/**
 * Where a conductor meets a part.
 *
 * @param part id of the part
 * @param name {@code +} or {@code -}; {@code 1} to {@code 4} on what lies in the conductor
 */
public record Terminal(String part, String name) implements Comparable<Terminal> {
    public static Terminal plus(String part) {
        return new Terminal(part, "+");
    }

    public static Terminal minus(String part) {
        return new Terminal(part, "-");
    }

    /** The terminal a job file writes as {@code part/name}. */
    public static Terminal of(String text) {
        int slash = text.lastIndexOf('/');
        return new Terminal(text.substring(0, slash), text.substring(slash + 1));
    }

    boolean is(Pole pole) {
        return name.equals(pole == Pole.PLUS ? "+" : "-");
    }

    @Override
    public int compareTo(Terminal other) {
        int parts = part.compareTo(other.part);
        return parts == 0 ? name.compareTo(other.name) : parts;
    }

    /** As it is written in a job file and on paper. */
    @Override
    public String toString() {
        return part + "/" + name;
    }
}
