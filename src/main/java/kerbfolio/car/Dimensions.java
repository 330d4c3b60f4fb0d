package kerbfolio.car;

import kerbfolio.formula.Term;
import kerbfolio.job.Track;
import kerbfolio.job.Vehicle;
import org.jspecify.annotations.Nullable;

/** Lengths of the car that every trade takes from one place. */
public final class Dimensions {
    private final Term wheelbase;
    private final Term frontTrack;
    private final Term rearTrack;

    Dimensions(Evidence evidence, @Nullable Vehicle vehicle, @Nullable String by) {
        Track track = vehicle == null ? null : vehicle.track();
        this.wheelbase = evidence.rounded(
                "vehicle.wheelbase", "wheelbase", "mm", vehicle == null ? null : vehicle.wheelbase(), by);
        this.frontTrack =
                evidence.rounded("vehicle.track.front", "front track", "mm", track == null ? null : track.front(), by);
        this.rearTrack =
                evidence.rounded("vehicle.track.rear", "rear track", "mm", track == null ? null : track.rear(), by);
    }

    public Term wheelbase() {
        return wheelbase;
    }

    public Term track(Axle axle) {
        return axle == Axle.FRONT ? frontTrack : rearTrack;
    }
}
