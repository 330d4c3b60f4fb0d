package kerbfolio.job;

import java.time.LocalDate;
import java.util.List;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;

/** Somebody who holds the document confirms figures of a requirement set. */
public record Confirmation(
        @Must @Means("requirement set") String set,
        @Must @Means("keys of the confirmed limits") List<String> limits,
        @Must @Means("edition of the document held") String edition,
        @Must @Means("who read it") String by,
        @Must @Means("day it was read") LocalDate date) {
    public Confirmation {
        limits = Lists.orEmpty(limits);
    }
}
