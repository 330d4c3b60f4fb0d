package kerbfolio.release;

import java.util.List;

/**
 * A reading worth taking next.
 *
 * @param what what to record
 * @param instrument what it takes
 * @param minutes about how long
 * @param paths where it goes in the job file
 * @param findings findings that lack it
 */
public record NextReading(String what, String instrument, int minutes, List<String> paths, List<String> findings) {}
