package kerbfolio.job;

import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** What a monitor watches of one box. */
public record WatchedBox(
        @Must @Means("id of the box") String part,

        @Means("numbers of its cell groups, such as 1-32, 34") @Nullable
        String cellGroups,

        @Means("numbers of its temperature points, the same way") @Nullable
        String temperaturePoints) {}
