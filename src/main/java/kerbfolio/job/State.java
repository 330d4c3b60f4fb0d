package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** What was in the car on the scales. */
public record State(
        @Means("fuel in the tank") @Nullable String fuel,
        @Means("people in the car") @In("1") @Nullable Quantity occupants,
        @Means("ballast in the car") @In("kg") @Nullable Quantity ballast,

        @Means("anything else that was not part of the car") @Nullable
        String note) {}
