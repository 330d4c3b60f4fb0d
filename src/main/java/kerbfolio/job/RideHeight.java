package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Height of a body landmark above the ground, before and after. */
public record RideHeight(
        @Means("id of the instrument") @Nullable String instrument,
        @Means("day it was measured as received") @Nullable LocalDate dateBefore,
        @Means("day it was measured as delivered") @Nullable LocalDate dateAfter,
        @Means("as received") @In("mm") @Nullable Quantity before,
        @Means("as delivered") @In("mm") @Nullable Quantity after,
        @Means("where it is measured") @Nullable String landmark) {}
