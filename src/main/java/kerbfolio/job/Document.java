package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.reading.Means;
import org.jspecify.annotations.Nullable;

/** A paper that belongs to the job. */
public record Document(
        @Means("what kind of paper") @Nullable DocumentKind kind,
        @Means("its number") @Nullable String number,
        @Means("its date") @Nullable LocalDate date,
        @Means("file beside the job file") @Nullable String file,
        @Means("what it says") @Nullable String note) {}
