package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Track of each axle. */
public record Track(
        @Means("front track") @In("m") @Nullable Quantity front,
        @Means("rear track") @In("m") @Nullable Quantity rear) {}
