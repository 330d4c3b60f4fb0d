package kerbfolio.checks.highvoltage;

import java.util.function.Function;
import kerbfolio.car.Car;
import kerbfolio.formula.Term;
import kerbfolio.job.Currents;
import kerbfolio.job.Module;
import kerbfolio.job.Pack;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What the pack is asked for, and what a module of it is rated for then. */
enum Duty {
    DRIVE("drive", Currents::drive, "peak-current", Module::peakCurrent),
    DRIVE_CONTINUOUS("drive-continuous", Currents::driveContinuous, "continuous-current", Module::continuousCurrent),
    REGENERATION("regeneration", Currents::regeneration, "charge-current", Module::chargeCurrent),
    CHARGE("charge", Currents::charge, "charge-current", Module::chargeCurrent);

    private final String key;
    private final Function<Currents, @Nullable Quantity> current;
    private final String ratingKey;
    private final Function<Module, @Nullable Quantity> rating;

    Duty(
            String key,
            Function<Currents, @Nullable Quantity> current,
            String ratingKey,
            Function<Module, @Nullable Quantity> rating) {
        this.key = key;
        this.current = current;
        this.ratingKey = ratingKey;
        this.rating = rating;
    }

    /** Whether it lasts seconds, so that ratings for a short time stand against it. */
    boolean isPeak() {
        return this == DRIVE || this == REGENERATION;
    }

    Term current(Car car) {
        Currents currents = car.pack().section().map(Pack::currents).orElse(null);
        return car.pack().current(key, "current of the pack in " + this, currents == null ? null : current.apply(currents));
    }

    /** What a module gives or takes then; no maker states a peak for charge, so regeneration counts against charge. */
    Term ofModule(Car car) {
        Module module = car.pack().section().map(Pack::module).orElse(null);
        return car.evidence()
                .stated(
                        "pack.module." + ratingKey,
                        ratingKey.replace('-', ' ') + " of a module",
                        "A",
                        module == null ? null : rating.apply(module),
                        module == null ? null : module.from());
    }

    @Override
    public String toString() {
        return this == DRIVE_CONTINUOUS ? "drive without end" : key;
    }
}
