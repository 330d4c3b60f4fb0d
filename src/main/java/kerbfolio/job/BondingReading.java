package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Resistance between a conductive part and the chassis, by a current through it. */
public record BondingReading(
        @Must @Means("id of the part; for the inlet's earth pin, of the inlet")
        String of,

        @Means("where the probe sat") @Nullable String point,
        @Means("id of the voltmeter") @Nullable String instrument,
        @Means("id of what measured the current") @Nullable String currentInstrument,
        @Means("day") @Nullable LocalDate date,
        @Means("who measured it") @Nullable String by,
        @Means("current through it") @In("A") @Nullable Quantity current,
        @Means("voltage along it") @In("mV") @Nullable Quantity voltage) {}
