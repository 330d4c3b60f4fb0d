package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Electrical ratings of a part, as its data sheet states them. */
public record Electrical(
        @Means("the data sheet, or who states it") @Nullable String from,

        @Means("least voltage it works at") @In("V") @Nullable
        Quantity minVoltage,

        @Means("highest voltage it may have between its poles") @In("V") @Nullable
        Quantity maxVoltage,

        @Means("current it carries without end") @In("A") @Nullable
        Quantity continuousCurrent,

        @Means("current it carries for its peak time") @In("A") @Nullable
        Quantity peakCurrent,

        @Means("how long it carries that") @In("s") @Nullable
        Quantity peakTime,

        @Means("its resistance in the way of the current") @In("Ω") @Nullable
        Quantity resistance,

        @Means("energy it takes in one pulse") @In("J") @Nullable
        Quantity pulseEnergy,

        @Means("capacitance between the poles") @In("µF") @Nullable
        Quantity capacitance,

        @Means("capacitance from each pole to the chassis") @In("µF") @Nullable
        Quantity yCapacitance,

        @Means("resistance that always lies between the poles") @In("kΩ") @Nullable
        Quantity bleed,

        @Means("time to wait before it is opened, as its maker states it") @In("min") @Nullable
        Quantity makersWait,

        @Means("whether it can bring voltage to its high-voltage side from elsewhere") @Nullable
        Boolean feedsBack) {}
