package kerbfolio.release;

/** What the record says of a gate. There is no word for "open": a program clears no car. */
public enum GateState {
    HELD("held"),
    NOT_EXAMINED("not examined"),
    NO_HOLD("no hold recorded");

    private final String words;

    GateState(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
