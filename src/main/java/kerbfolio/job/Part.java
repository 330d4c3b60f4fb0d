package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Something fitted during the conversion. */
public record Part(
        @Must @Means("name the rest of the file calls it by")
        String id,

        @Means("what it is, in shop words") @Nullable String name,
        @Means("its part in the car") @Nullable String role,
        @Means("maker") @Nullable String make,
        @Means("model") @Nullable String model,
        @Means("part number as written") @Nullable String partNumber,

        @Means("serial number as written, or unreadable") @Nullable
        String serial,

        @Means("firmware as written") @Nullable String firmware,

        @Means("id of what weighed it; leave out if the mass is stated") @Nullable
        String instrument,

        @Means("who states the mass, if nobody weighed it") @Nullable
        String massFrom,

        @Means("day it was weighed") @Nullable LocalDate date,
        @Means("its mass") @In("kg") @Nullable Quantity mass,
        @Means("where its centre of gravity sits") @Nullable Position position) {}
