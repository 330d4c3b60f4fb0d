package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Ratings of an on-board charger. */
public record ChargerRatings(
        @Means("the data sheet, or who states it") @Nullable String from,

        @Means("mains voltage it takes, from conductor to conductor where it has three phases") @In("V") @Nullable
        Quantity inputVoltage,

        @Means("largest mains current it takes") @In("A") @Nullable
        Quantity inputCurrent,

        @Means("phases it takes: 1 or 3") @In("1") @Nullable Quantity phases,

        @Means("largest power it gives the pack") @In("kW") @Nullable
        Quantity power,

        @Means("power given over power taken") @In("%") @Nullable
        Quantity efficiency) {}
