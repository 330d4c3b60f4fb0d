package kerbfolio.job;

import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** The car on the scales. */
public record Weighings(
        @Means("before anything was taken out") @Nullable Weighing asReceived,
        @Means("as it leaves") @Nullable Weighing asDelivered,

        @Means("weighing with one axle raised, for the height of the centre of gravity") @Nullable
        Tilt tilt) {}
