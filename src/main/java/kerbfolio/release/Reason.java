package kerbfolio.release;

/**
 * One reason why a gate is not free.
 *
 * @param state what the reason makes of the gate
 * @param text in words
 * @param finding id of the finding or punch-list item behind it; empty if there is none
 */
public record Reason(GateState state, String text, String finding) {}
