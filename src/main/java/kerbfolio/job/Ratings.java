package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Permitted masses, stated by a plate or paper. */
public record Ratings(
        @Means("permitted gross mass") @In("kg") @Nullable Quantity gross,

        @Means("permitted front axle mass") @In("kg") @Nullable
        Quantity frontAxle,

        @Means("permitted rear axle mass") @In("kg") @Nullable
        Quantity rearAxle,

        @Means("plate or paper that states them") @Nullable String from) {}
