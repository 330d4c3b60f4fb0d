package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Two voltages of a bus that was left alone. */
public record DecayReading(
        @Must @Means("id of a part on the bus") String of,
        @Means("id of the voltmeter") @Nullable String instrument,
        @Means("id of the watch") @Nullable String timeInstrument,
        @Means("day") @Nullable LocalDate date,
        @Means("who measured it") @Nullable String by,
        @Means("the first reading") @Nullable DecayPoint first,
        @Means("the second reading") @Nullable DecayPoint second,

        @Means("whether something discharged the bus on purpose") @Nullable
        Boolean active) {}
