package kerbfolio.release;

import java.util.List;
import kerbfolio.check.Examination;

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

    /** What a finding says against a gate. */
    static Reason of(GateState state, Examination examination, Examination.Row row) {
        String what = examination.check().id().replace('-', ' ') + ", "
                + row.finding().subject() + ": " + row.verdict();
        String why = switch (row.verdict()) {
            case NO_EVIDENCE -> " (" + row.finding().lack() + ")";
            case NO_LIMIT -> " is given by the home set";
            default -> "";
        };
        return new Reason(state, what + why, List.of(row.id()));
    }
}
