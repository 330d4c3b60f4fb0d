package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A battery part and the modules in it, all in series. */
public record Box(
        @Must @Means("id of the part") String part,
        @Means("modules in it") @In("1") @Nullable Quantity modules) {}
