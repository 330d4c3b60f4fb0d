package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Mass on each wheel; left as seen from the driver's seat. */
public record Corners(
        @Means("left front") @In("kg") @Nullable Quantity leftFront,
        @Means("right front") @In("kg") @Nullable Quantity rightFront,
        @Means("left rear") @In("kg") @Nullable Quantity leftRear,
        @Means("right rear") @In("kg") @Nullable Quantity rightRear) {}
