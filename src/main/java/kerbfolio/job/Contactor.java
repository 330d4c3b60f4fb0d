package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Ratings of a contactor. */
public record Contactor(
        @Means("the data sheet, or who states it") @Nullable String from,

        @Means("largest direct current it opens at the pack's voltage") @In("A") @Nullable
        Quantity breakingCurrent,

        @Means("the same against its marked polarity") @In("A") @Nullable
        Quantity reverseBreakingCurrent,

        @Means("whether its maker marks a polarity") @Nullable
        Boolean polarised,

        @Means("the terminal its maker marks +") @Nullable String plusTerminal) {}
