package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Currents of the pack with the settings in force. */
public record Currents(
        @Means("where the settings were read") @Nullable String from,

        @Means("largest in drive, for seconds") @In("A") @Nullable
        Quantity drive,

        @Means("in drive without end") @In("A") @Nullable Quantity driveContinuous,

        @Means("largest under regeneration") @In("A") @Nullable
        Quantity regeneration,

        @Means("in charge") @In("A") @Nullable Quantity charge) {}
