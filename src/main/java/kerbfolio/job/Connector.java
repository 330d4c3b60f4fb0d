package kerbfolio.job;

import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A connector of a part, or a service disconnect. */
public record Connector(
        @Must @Means("name the interlock loop calls it by") String id,

        @Means("what it takes to part it: hand or tool") @Nullable
        Opening opensWith,

        @Means("degree of protection while joined") @Nullable
        String mated,

        @Means("degree of protection of what is live once it is parted") @Nullable
        String open,

        @Means("whether it has a lock that keeps it joined") @Nullable
        Boolean locked,

        @Means("time after parting until its live parts are at most 60 V") @In("s") @Nullable
        Quantity deadWithin,

        @Means("current it carries without end") @In("A") @Nullable
        Quantity current,

        @Means("current it carries for a short time") @In("A") @Nullable
        Quantity peakCurrent,

        @Means("the data sheet, or who states it") @Nullable String from) {}
