package kerbfolio.formula;

/**
 * One line of an uncertainty budget.
 *
 * @param cause the reading or instrument that moves the result
 * @param effect change of the result when the cause moves by one standard uncertainty, SI
 * @param part its part of the result's variance, 0 to 1
 */
public record Share(String cause, double effect, double part) {}
