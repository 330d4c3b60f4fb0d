package kerbfolio.job;

import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Ride height of each axle. */
public record RideHeights(
        @Means("at the front axle") @Nullable RideHeight front,
        @Means("at the rear axle") @Nullable RideHeight rear) {}
