package kerbfolio.job;

import java.util.List;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A battery monitor: what it watches, with the limits in force. */
public record Monitor(
        @Must @Means("id of the part") String part,
        @Means("where the limits were read") @Nullable String from,
        @Means("boxes it watches") List<WatchedBox> watches,
        @Means("limits in force and what it does at each") List<Protection> limits) {
    public Monitor {
        watches = Lists.orEmpty(watches);
        limits = Lists.orEmpty(limits);
    }
}
