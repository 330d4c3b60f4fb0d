package kerbfolio.release;

import java.util.stream.Collectors;
import kerbfolio.check.Examination;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;

/**
 * One reason why a gate is not free.
 *
 * @param state what the reason makes of the gate
 * @param text in words
 * @param finding id of the finding or punch-list item behind it; empty if there is none
 */
public record Reason(GateState state, String text, String finding) {
    /** What a finding says against a gate. */
    static Reason of(GateState state, Examination examination, Examination.Row row) {
        String what = examination.check().id().replace('-', ' ') + ", "
                + row.finding().subject() + ": " + row.verdict();
        String why = switch (row.verdict()) {
            case NO_EVIDENCE -> " (" + lack(row.finding().result()) + ")";
            case NO_LIMIT -> " is given by the home set";
            default -> "";
        };
        return new Reason(state, what + why, row.id());
    }

    /** What is lacking, by name; or why what is there cannot be used. */
    private static String lack(Term result) {
        boolean onlyUnrecorded =
                !result.missing().isEmpty() && result.missing().stream().allMatch(Absent::isUnrecorded);
        return onlyUnrecorded
                ? "not recorded: "
                        + result.missing().stream().map(Absent::name).distinct().collect(Collectors.joining(", "))
                : result.origin();
    }
}
