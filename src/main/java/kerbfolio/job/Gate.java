package kerbfolio.job;

import java.util.List;

/** What a car may be let out for; each gate names the gates that must be free of holds before it. */
public enum Gate {
    TRANSPORT("transport", "leaves the shop dead, on a trailer"),
    ENERGISE("energise", "high voltage on, own power on private ground"),
    INSPECTION("inspection", "presented to the authority", ENERGISE),
    ROAD("road", "driven on public roads", INSPECTION);

    private final String key;
    private final String meaning;

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives an immutable list
    private final List<Gate> needs;

    Gate(String key, String meaning, Gate... needs) {
        this.key = key;
        this.meaning = meaning;
        this.needs = List.of(needs);
    }

    public String meaning() {
        return meaning;
    }

    public List<Gate> needs() {
        return needs;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
