package kerbfolio.job;

import java.time.LocalDate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** A label or a marking that is fitted. */
public record Label(
        @Must @Means("id of the part or link") String on,
        @Must @Means("what it shows") LabelKind shows,

        @Means("whether it is there; no where somebody looked and found none") @Nullable
        Boolean there,

        @Means("minutes to wait it names") @In("min") @Nullable
        Quantity minutes,

        @Means("who saw it there") @Nullable String by,
        @Means("day") @Nullable LocalDate date) {
    /** Whether it was seen; a label that is listed and not said to be missing was. */
    public boolean isThere() {
        return !Boolean.FALSE.equals(there);
    }
}
