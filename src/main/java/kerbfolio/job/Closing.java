package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** How an item of the punch list was closed. */
public record Closing(
        @Means("who closed it") @Nullable String by,
        @Means("day it was closed") @Nullable LocalDate date,
        @Means("the reading that shows it") @Nullable String reading,

        @Means("the photo that shows it, a file beside the job file") @Nullable
        String photo) {}
