package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Where the mechanic measures that the car is dead. */
public record TestPoint(
        @Must @Means("what the probes touch") String name,

        @Means("cover that comes off first, and with which tool") @Nullable
        String cover,

        @Means("what still guards the live parts once it is off") @Nullable
        String protection,

        @Means("protective equipment for opening it") @Nullable
        String equipment,

        @Means("resistor in each test lead or socket") @In("kΩ") @Nullable
        Quantity seriesResistance) {}
