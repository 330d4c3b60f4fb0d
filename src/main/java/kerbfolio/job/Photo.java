package kerbfolio.job;

import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A picture that belongs to the job. */
public record Photo(
        @Must @Means("file beside the job file") String file,
        @Means("what it shows") @Nullable String caption,
        @Means("id of what it shows") @Nullable String subject) {}
