package kerbfolio.car;

import java.time.LocalDate;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.RideHeight;
import kerbfolio.job.Spring;
import kerbfolio.job.Vehicle;
import kerbfolio.quantity.Quantity;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** What carries one axle: the rate at the wheel, and where the body stood before and after. */
public final class Suspension {
    /** Spring and wheel do the same work; motion ratio is spring travel over wheel travel. */
    public static final Formula WHEEL_RATE = Formula.of("k_w = k_s*(i*cos(beta))^2")
            .giving("rate at the wheel", "N/mm")
            .with("k_s", "rate of one spring", "N/mm")
            .with("i", "motion ratio", "1")
            .with("beta", "lean of the spring", "°")
            .from(Source.STATICS.clause("virtual work of spring and wheel travel"))
            .build();

    /** Spring and tyre in series. */
    public static final Formula RIDE_RATE = Formula.of("k = k_w*k_t/(k_w + k_t)")
            .giving("rate between body and ground", "N/mm")
            .with("k_w", "rate at the wheel", "N/mm")
            .with("k_t", "rate of one tyre", "N/mm")
            .needs("k_w > 0*[N/mm]")
            .from(Source.STATICS.clause("springs in series"))
            .build();

    private final Axle axle;
    private final Working rate;
    private final Term unsprungMass;
    private final Term heightBefore;
    private final Term heightAfter;

    Suspension(Evidence evidence, @Nullable Vehicle vehicle, Axle axle) {
        this.axle = axle;
        Spring spring = spring(vehicle, axle);
        String path = "vehicle.springs." + axle.key() + ".";
        String by = spring == null ? null : spring.from();
        Working wheelRate = Working.fill(WHEEL_RATE)
                .named("rate at the wheel, " + axle)
                .put("k_s", evidence.rounded(path + "rate", "spring rate, " + axle, "N/mm", rate(spring), by))
                .put("i", evidence.rounded(path + "motion-ratio", "motion ratio, " + axle, "1", ratio(spring), by))
                .put("beta", evidence.rounded(path + "lean", "lean of the spring, " + axle, "°", lean(spring), by))
                .work();
        this.rate = Working.fill(RIDE_RATE)
                .named("rate between body and ground, " + axle)
                .put("k_w", wheelRate)
                .put("k_t", evidence.rounded(path + "tyre-rate", "tyre rate, " + axle, "N/mm", tyre(spring), by))
                .work();
        this.unsprungMass = evidence.rounded(
                path + "unsprung-mass",
                "unsprung mass of one wheel, " + axle,
                "kg",
                spring == null ? null : spring.unsprungMass(),
                by);
        RideHeight height = height(vehicle, axle);
        this.heightBefore = height(
                evidence,
                "before",
                height,
                height == null ? null : height.before(),
                height == null ? null : height.dateBefore());
        this.heightAfter = height(
                evidence,
                "after",
                height,
                height == null ? null : height.after(),
                height == null ? null : height.dateAfter());
    }

    public Axle axle() {
        return axle;
    }

    /** Rate between body and ground at one wheel, spring and tyre in series. */
    public Working rate() {
        return rate;
    }

    /** Mass of one wheel with what moves with it. */
    public Term unsprungMass() {
        return unsprungMass;
    }

    public Term heightBefore() {
        return heightBefore;
    }

    public Term heightAfter() {
        return heightAfter;
    }

    private Term height(
            Evidence evidence,
            String key,
            @Nullable RideHeight height,
            @Nullable Quantity quantity,
            @Nullable LocalDate date) {
        return evidence.measured(
                "vehicle.ride-height." + axle.key() + "." + key,
                "ride height " + key + ", " + axle,
                "mm",
                quantity,
                height == null ? null : height.instrument(),
                date);
    }

    private static @Nullable Spring spring(@Nullable Vehicle vehicle, Axle axle) {
        var springs = vehicle == null ? null : vehicle.springs();
        return springs == null ? null : axle == Axle.FRONT ? springs.front() : springs.rear();
    }

    private static @Nullable RideHeight height(@Nullable Vehicle vehicle, Axle axle) {
        var heights = vehicle == null ? null : vehicle.rideHeight();
        return heights == null ? null : axle == Axle.FRONT ? heights.front() : heights.rear();
    }

    private static @Nullable Quantity rate(@Nullable Spring spring) {
        return spring == null ? null : spring.rate();
    }

    private static @Nullable Quantity ratio(@Nullable Spring spring) {
        return spring == null ? null : spring.motionRatio();
    }

    private static @Nullable Quantity lean(@Nullable Spring spring) {
        return spring == null ? null : spring.lean();
    }

    private static @Nullable Quantity tyre(@Nullable Spring spring) {
        return spring == null ? null : spring.tyreRate();
    }
}
