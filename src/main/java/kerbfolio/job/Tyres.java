package kerbfolio.job;

import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Tyres of each axle. */
public record Tyres(
        @Means("front tyres") @Nullable Tyre front,
        @Means("rear tyres") @Nullable Tyre rear) {}
