package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A finding let pass by name; always printed. */
public record Waiver(
        @Must @Means("id of the finding, as findings.json gives it")
        String finding,

        @Must @Means("who answers for it") String by,
        @Means("day") @Nullable LocalDate date,
        @Must @Means("why") String reason) {}
