package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A known resistor fitted from a pole to the chassis, to see the isolation monitor warn. */
public record MonitorTest(
        @Means("id of what measured the resistor") @Nullable String instrument,
        @Means("day") @Nullable LocalDate date,
        @Means("who saw it") @Nullable String by,
        @Means("the resistor fitted") @In("kΩ") @Nullable Quantity resistor,

        @Means("pack voltage during the test") @In("V") @Nullable
        Quantity packVoltage,

        @Means("id of the isolation reading before it") @Nullable
        String isolation,

        @Means("whether the monitor warned") @Nullable Boolean warned) {}
