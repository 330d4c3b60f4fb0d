package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Height of the wheel centres above the ground with the car level. */
public record LoadedRadii(
        @Means("front wheel") @In("mm") @Nullable Quantity front,
        @Means("rear wheel") @In("mm") @Nullable Quantity rear) {}
