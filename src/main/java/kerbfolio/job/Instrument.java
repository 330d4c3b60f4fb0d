package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** What measured something. */
public record Instrument(
        @Must @Means("name readings call it by") String id,
        @Means("what it is") @Nullable String kind,
        @Means("serial number as written") @Nullable String serial,

        @Means("limit of error that grows with the reading and is shared by all its readings") @In("%") @Nullable
        Quantity ofReading,

        @Means("limit of error of each single reading") @In("*") @Nullable
        Quantity fixed,

        @Means("id of the reference it was set against, whose error all share") @Nullable
        String calibratedWith,

        @Means("last calibration") @Nullable LocalDate calibrated,
        @Means("calibration due") @Nullable LocalDate due) {}
