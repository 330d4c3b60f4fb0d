package kerbfolio.reading;

/** What a file says, and where it says it. */
public record Parsed<T>(T value, Places places) {}
