package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A point of a fuse's time-current curve. */
public record CurvePoint(
        @Means("current") @In("A") @Nullable Quantity current,

        @Means("time until it has melted") @In("s") @Nullable
        Quantity time) {}
