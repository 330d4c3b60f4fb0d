package kerbfolio.release;

import java.util.List;

/**
 * One reason why a gate is not free.
 *
 * @param state what the reason makes of the gate
 * @param text in words
 * @param findings ids of the findings or the punch-list item behind it
 */
public record Reason(GateState state, String text, List<String> findings) {
    /** Keeps its own list. */
    public Reason {
        findings = List.copyOf(findings);
    }

    /** A reason no single finding stands behind. */
    Reason(GateState state, String text) {
        this(state, text, List.of());
    }
}
