package kerbfolio.job;

import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** The case of a part: who can reach what is live in it. */
public record Enclosure(
        @Means("where the part sits: cabin, luggage, engine-bay, underfloor or outside") @Nullable
        Place place,

        @Means("degree of protection as marked, such as IP67 or IPXXB") @Nullable
        String protection,

        @Means("what it takes to open it: hand or tool") @Nullable
        Opening opensWith,

        @Means("degree of protection of what is live once it is open") @Nullable
        String openProtection,

        @Means("whether its outside is metal or otherwise conducts") @Nullable
        Boolean conductive,

        @Means("whether it is reached only after other parts are taken off with tools") @Nullable
        Boolean hidden,

        @Means("who states it, or the data sheet") @Nullable String from) {}
