package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** Highest and lowest cell group at handover. */
public record CellReading(
        @Means("id of the instrument, or of the monitor that shows it") @Nullable
        String instrument,

        @Means("day") @Nullable LocalDate date,
        @Means("highest cell group") @In("V") @Nullable Quantity highest,
        @Means("lowest cell group") @In("V") @Nullable Quantity lowest,

        @Means("state of charge at the reading") @In("%") @Nullable
        Quantity stateOfCharge) {}
