package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A place in the car: from the front axle, the centre line and the ground. */
public record Position(
        @Means("from the front axle, rearward positive") @In(value = "m", signed = true) @Nullable
        Quantity x,

        @Means("from the centre line, positive to the right as the driver sits")
        @In(value = "m", signed = true)
        @Nullable
        Quantity y,

        @Means("above the ground") @In("m") @Nullable Quantity z,

        @Means("the place in words, where x is only known within its ±") @Nullable
        String zone) {}
