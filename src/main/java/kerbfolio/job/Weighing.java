package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** One weighing: two axles or four corners. */
public record Weighing(
        @Means("day of the weighing") @Nullable LocalDate date,
        @Means("id of the instrument") @Nullable String instrument,

        @Means("where the figures were published, if nobody weighed the car") @Nullable
        String statedBy,

        @Means("ticket number") @Nullable String ticket,
        @Means("who weighed it") @Nullable String by,
        @Means("what was in the car") @Nullable State state,

        @Means("whole car, where no axle is known") @In("kg") @Nullable
        Quantity total,

        @Means("mass on each axle") @Nullable Axles axles,
        @Means("mass on each wheel") @Nullable Corners corners) {}
