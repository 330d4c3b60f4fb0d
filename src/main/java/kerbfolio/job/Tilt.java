package kerbfolio.job;

import java.time.LocalDate;
import java.util.List;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Weighing with the rear axle raised, front wheels on the scales. */
public record Tilt(
        @Means("day of the weighing") @Nullable LocalDate date,
        @Means("id of the scales") @Nullable String instrument,

        @Means("id of what measured rise and radii") @Nullable
        String lengthInstrument,

        @Means("id of the inclinometer, where angles were read") @Nullable
        String angleInstrument,

        @Means("wheel centre above the ground, level") @Nullable
        LoadedRadii loadedRadius,

        @Means("one entry a lift height") List<TiltStep> steps,

        @Means("how suspension was blocked, what was in the car") @Nullable
        String note) {
    public Tilt {
        steps = Lists.orEmpty(steps);
    }
}
