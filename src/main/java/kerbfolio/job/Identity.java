package kerbfolio.job;

import java.time.LocalDate;
import java.util.List;
import kerbfolio.quantity.UnitSystem;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Whose job, which car, which revision, and by what rules. */
public record Identity(
        @Must @Means("job number; names the folder of the dossier")
        String number,

        @Must @Means("revision of this dossier, such as 1 or A")
        String revision,

        @Must @Means("day the dossier speaks of") LocalDate date,

        @Must @Means("how much of the file is undertaken: first, inspection or full")
        Tier tier,

        @Means("the shop that did the work") @Nullable String shop,
        @Means("whose car it is") @Nullable String customer,
        @Means("who answers for this record") @Nullable String preparedBy,
        @Means("whom to call") @Nullable String phone,

        @Means("the unit system printed large: si or us") @Nullable
        UnitSystem units,

        @Means("the sheet: a4 or letter") @Nullable Paper paper,
        @Means("requirement set that holds gates") @Nullable String homeSet,

        @Means("requirement sets printed as comparison; they hold nothing")
        List<String> comparedWith,

        @Means("day the car comes back for what is open") @Nullable
        LocalDate returnVisit) {
    public Identity {
        comparedWith = Lists.orEmpty(comparedWith);
    }
}
