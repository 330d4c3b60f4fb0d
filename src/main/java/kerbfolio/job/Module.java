package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** One module of the pack. */
public record Module(
        @Means("the data sheet, or who states it") @Nullable String from,
        @Means("cell groups in series") @In("1") @Nullable Quantity cellGroups,
        @Means("cells in each group") @In("1") @Nullable Quantity cellsInParallel,
        @Means("temperature points") @In("1") @Nullable Quantity temperaturePoints,

        @Means("resistance from terminal to terminal, at its lowest") @In("mΩ") @Nullable
        Quantity resistance,

        @Means("ohmic or pulse") @Nullable ResistanceKind resistanceKind,

        @Means("current it gives without end") @In("A") @Nullable
        Quantity continuousCurrent,

        @Means("current it gives for a short time") @In("A") @Nullable
        Quantity peakCurrent,

        @Means("current it takes without end") @In("A") @Nullable
        Quantity chargeCurrent) {}
