package kerbfolio.job;

import java.util.List;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** The car as an object on four wheels. */
public record Vehicle(
        @Means("what the car is, in a few words") @Nullable String description,

        @Means("vehicle identification number as stamped") @Nullable
        String identification,

        @Means("registration plate") @Nullable String plate,
        @Means("odometer on the day") @In("km") @Nullable Quantity odometer,

        @Means("year or date of first registration") @Nullable
        String firstRegistered,

        @Means("front axle to rear axle") @In("m") @Nullable Quantity wheelbase,

        @Means("distance between the wheel centre planes of an axle") @Nullable
        Track track,

        @Means("seats, the driver's included") @In("1") @Nullable
        Quantity seats,

        @Means("top speed with the settings in force") @In("km/h") @Nullable
        Quantity topSpeed,

        @Means("permitted masses from the plate or papers") @Nullable
        Ratings ratings,

        @Means("tyres fitted at handover") @Nullable Tyres tyres,
        @Means("spring rates as fitted") @Nullable Springs springs,
        @Means("ride heights before and after") @Nullable RideHeights rideHeight,

        @Means("what the owner declares to carry: occupants, luggage")
        List<Load> load) {
    public Vehicle {
        load = Lists.orEmpty(load);
    }
}
