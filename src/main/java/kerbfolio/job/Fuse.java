package kerbfolio.job;

import java.util.List;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Ratings of a fuse. */
public record Fuse(
        @Means("the data sheet, or who states it") @Nullable String from,
        @Means("rated direct voltage") @In("V") @Nullable Quantity dcVoltage,

        @Means("rated alternating voltage") @In("V") @Nullable
        Quantity acVoltage,

        @Means("rated current") @In("A") @Nullable Quantity current,

        @Means("share of its rated current it carries without end where it sits") @In("%") @Nullable
        Quantity derate,

        @Means("largest direct current it breaks") @In("kA") @Nullable
        Quantity breakingCapacity,

        @Means("least current it breaks") @In("A") @Nullable Quantity minimumBreaking,

        @Means("total heat integral it lets through at its breaking capacity") @In("A²·s") @Nullable
        Quantity letThrough,

        @Means("points of its time-current curve as its maker draws it")
        List<CurvePoint> curve) {
    public Fuse {
        curve = Lists.orEmpty(curve);
    }
}
