package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Something the owner declares to carry. */
public record Load(
        @Must @Means("what it is") String name,
        @Means("its mass") @In("kg") @Nullable Quantity mass,
        @Means("where it sits") @Nullable Position position) {}
