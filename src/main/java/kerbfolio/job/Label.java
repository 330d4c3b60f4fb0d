package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A label or a marking that is fitted. */
public record Label(
        @Must @Means("id of the part or link") String on,
        @Must @Means("what it shows") LabelKind shows,
        @Means("who saw it there") @Nullable String by,
        @Means("day") @Nullable LocalDate date) {}
