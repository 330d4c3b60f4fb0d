package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** One spring of an axle and the leverage it works through. */
public record Spring(
        @Means("rate of one spring") @In("N/mm") @Nullable Quantity rate,

        @Means("spring travel over wheel travel") @In("1") @Nullable
        Quantity motionRatio,

        @Means("angle of the spring from the wheel's direction of travel") @In("°") @Nullable
        Quantity lean,

        @Means("radial rate of one tyre") @In("N/mm") @Nullable
        Quantity tyreRate,

        @Means("mass of one wheel with what moves with it") @In("kg") @Nullable
        Quantity unsprungMass,

        @Means("who states the rate") @Nullable String from) {}
