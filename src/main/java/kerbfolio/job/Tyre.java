package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A tyre, as its sidewall says. */
public record Tyre(
        @Means("size as marked") @Nullable String size,

        @Means("load index as marked, for a single tyre") @In("1") @Nullable
        Quantity loadIndex,

        @Means("greatest load marked on the sidewall, one tyre; it goes before the load index") @In("kg") @Nullable
        Quantity maxLoad,

        @Means("speed symbol as marked") @Nullable String speedSymbol,
        @Means("cold pressure set") @In("bar") @Nullable Quantity pressure) {}
