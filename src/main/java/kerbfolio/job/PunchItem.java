package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Something still to be done, or done since. */
public record PunchItem(
        @Must @Means("number or name") String id,
        @Must @Means("what is to be done") String text,
        @Means("where on the car") @Nullable String area,
        @Means("day it was raised") @Nullable LocalDate raised,
        @Means("who raised it") @Nullable String by,

        @Must @Means("the gate it holds: transport, energise, inspection, road or none")
        Hold holds,

        @Means("who sees to it") @Nullable Owner owner,
        @Means("day it is due") @Nullable LocalDate due,

        @Means("who closed it, and on what evidence") @Nullable
        Closing closed,

        @Means("anything else") @Nullable String note) {}
