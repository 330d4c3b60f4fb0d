package kerbfolio.procedure;

/**
 * Something that may stay live.
 *
 * @param what the part, and where it sits
 * @param between which two things
 * @param volts rounded up, or that it is not known
 * @param why what keeps it live, and until when
 */
public record Live(String what, String between, String volts, String why) {}
