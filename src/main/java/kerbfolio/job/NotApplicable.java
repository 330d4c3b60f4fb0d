package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A check that does not apply to this car, by name and reason. */
public record NotApplicable(
        @Must @Means("name of the check, or check/subject") String check,
        @Must @Means("who says so") String by,
        @Means("day") @Nullable LocalDate date,
        @Must @Means("why") String reason) {}
