package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** What a motor does when it is turned from outside. */
public record Motor(
        @Means("the data sheet, or who states it") @Nullable String from,

        @Means("magnet, induction, wound-field or reluctance") @Nullable
        MotorKind kind,

        @Means("peak voltage between two phases at the speed beside it, turned without current") @In("V") @Nullable
        Quantity backVoltage,

        @Means("speed of the motor at which it makes that") @In("rpm") @Nullable
        Quantity backVoltageAt,

        @Means("turns of the motor for one turn of the wheel") @In("1") @Nullable
        Quantity ratio,

        @Means("rolling radius of the driven wheels") @In("mm") @Nullable
        Quantity rollingRadius,

        @Means("highest speed it may be towed at with the driven wheels on the road") @In("km/h") @Nullable
        Quantity towSpeed) {}
