package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** How the bus is filled before the main contactor closes. */
public record Precharge(
        @Means("where the settings were read") @Nullable String from,
        @Means("id of the resistor") @Nullable String resistor,

        @Means("time from its contactor's closing to the main contactor's") @In("s") @Nullable
        Quantity time,

        @Means("whether the main contactor waits for the bus voltage and not only for the time") @Nullable
        Boolean byVoltage) {}
