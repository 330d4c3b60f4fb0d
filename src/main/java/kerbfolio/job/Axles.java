package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Mass on each axle. */
public record Axles(
        @Means("front axle") @In("kg") @Nullable Quantity front,
        @Means("rear axle") @In("kg") @Nullable Quantity rear) {}
