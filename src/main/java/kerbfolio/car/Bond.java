package kerbfolio.car;

/**
 * What lets current pass between two terminals.
 *
 * @param kind what it is
 * @param id of the link or the part
 * @param from one end; the minus pole of a source
 * @param to the other end; the plus pole of a source
 */
public record Bond(Kind kind, String id, Terminal from, Terminal to) {
    /** What lets current pass. */
    public enum Kind {
        /** A cable or busbar. */
        CABLE,
        FUSE,
        CONTACTOR,
        DISCONNECT,
        /** A resistor or sensor in the conductor. */
        IN_LINE,
        /** A box of cells. */
        SOURCE,
        /** Whatever lies between the poles and takes or gives current. */
        CONSUMER;

        /** Whether both its ends have the same voltage while no current flows. */
        boolean isConductor() {
            return this != SOURCE && this != CONSUMER;
        }
    }

    /** The end that is not this one. */
    Terminal beyond(Terminal end) {
        return end.equals(from) ? to : from;
    }
}
