package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A limit of the battery monitor and what it does there. */
public record Protection(
        @Must @Means("what it watches") Watched on,

        @Means("the limit in force") @In(value = "*", signed = true) @Nullable
        Quantity at,

        @Means("what it does there") @Nullable Action does) {}
