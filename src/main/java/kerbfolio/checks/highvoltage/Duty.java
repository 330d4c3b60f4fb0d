package kerbfolio.checks.highvoltage;

import kerbfolio.car.Car;
import kerbfolio.formula.Term;
import kerbfolio.job.Currents;
import kerbfolio.job.Module;
import kerbfolio.job.Pack;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What the pack is asked for, and what a module of it is rated for then. */
enum Duty {
    DRIVE("drive", "peak-current"),
    DRIVE_CONTINUOUS("drive-continuous", "continuous-current"),
    REGENERATION("regeneration", "charge-current"),
    CHARGE("charge", "charge-current");

    private final String key;
    private final String rating;

    Duty(String key, String rating) {
        this.key = key;
        this.rating = rating;
    }

    /** Whether it lasts seconds, so that ratings for a short time stand against it. */
    boolean isPeak() {
        return this == DRIVE || this == REGENERATION;
    }

    Term current(Car car) {
        Currents currents = car.pack().section().map(Pack::currents).orElse(null);
        return car.pack()
                .plate()
                .current(key, "current of the pack in " + this, currents == null ? null : of(currents));
    }

    private @Nullable Quantity of(Currents currents) {
        return switch (this) {
            case DRIVE -> currents.drive();
            case DRIVE_CONTINUOUS -> currents.driveContinuous();
            case REGENERATION -> currents.regeneration();
            case CHARGE -> currents.charge();
        };
    }

    /** What a module gives or takes then; no maker states a peak for charge, so regeneration counts against charge. */
    Term ofModule(Car car) {
        Module module = car.pack().section().map(Pack::module).orElse(null);
        return car.evidence()
                .stated(
                        "pack.module." + rating,
                        rating.replace('-', ' ') + " of a module",
                        "A",
                        module == null ? null : of(module),
                        module == null ? null : module.from());
    }

    private @Nullable Quantity of(Module module) {
        return switch (this) {
            case DRIVE -> module.peakCurrent();
            case DRIVE_CONTINUOUS -> module.continuousCurrent();
            case REGENERATION, CHARGE -> module.chargeCurrent();
        };
    }

    @Override
    public String toString() {
        return this == DRIVE_CONTINUOUS ? "drive without end" : key;
    }
}
