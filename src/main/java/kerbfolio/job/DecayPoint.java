package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A voltage at a time. */
public record DecayPoint(
        @Means("voltage between the poles") @In("V") @Nullable
        Quantity voltage,

        @Means("time since the first was opened") @In("s") @Nullable
        Quantity time) {}
