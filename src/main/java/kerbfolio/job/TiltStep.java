package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** One lift height. */
public record TiltStep(
        @Means("rise of the rear wheel centre over the front one, beyond level") @In("mm") @Nullable
        Quantity rise,

        @Means("mass on the left front wheel there, with the right one instead of the axle") @In("kg") @Nullable
        Quantity leftFront,

        @Means("mass on the right front wheel there") @In("kg") @Nullable
        Quantity rightFront,

        @Means("angle of the body by inclinometer, instead of the rise") @In("°") @Nullable
        Quantity angle,

        @Means("mass on the front axle there") @In("kg") @Nullable
        Quantity frontAxle) {}
