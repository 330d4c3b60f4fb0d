package kerbfolio.job;

import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Springs of each axle. */
public record Springs(
        @Means("front springs") @Nullable Spring front,
        @Means("rear springs") @Nullable Spring rear) {}
