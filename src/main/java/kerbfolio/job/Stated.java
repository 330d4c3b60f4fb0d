package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Figures the shop states on its own sheet; each is computed again and compared. */
public record Stated(
        @Means("who states them") @Nullable String by,

        @Means("change of mass by the conversion") @In(value = "kg", signed = true) @Nullable
        Quantity massChange,

        @Means("kerb mass as delivered") @In("kg") @Nullable Quantity kerbMass) {}
