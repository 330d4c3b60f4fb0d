package kerbfolio.reading;

/**
 * A section whose name is reserved and whose content this version does not examine; it is kept by its size alone.
 *
 * @param entries how many entries it holds
 */
public record Unread(int entries) {}
