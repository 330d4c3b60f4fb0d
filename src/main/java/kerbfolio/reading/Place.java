package kerbfolio.reading;

/**
 * Where something stands in a file.
 *
 * @param line counted from 1
 * @param column counted from 1, in characters as a reader counts them
 * @param start first character of what is written there, counted from 0 in {@link Places#text()}; quotes belong to it
 * @param end the character after its last
 */
public record Place(int line, int column, int start, int end) {}
