package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Something taken out of the car. */
public record Removed(
        @Must @Means("name the rest of the file calls it by")
        String id,

        @Means("what it is, in shop words") @Nullable String name,

        @Means("id of what weighed it; leave out if the mass is stated") @Nullable
        String instrument,

        @Means("who states the mass, if nobody weighed it") @Nullable
        String massFrom,

        @Means("day it was weighed") @Nullable LocalDate date,
        @Means("its mass") @In("kg") @Nullable Quantity mass,
        @Means("where its centre of gravity sat") @Nullable Position position,

        @Means("stored where, or disposed with which receipt") @Nullable
        String fate,

        @Means("what putting it back would need") @Nullable String puttingBack) {}
