package kerbfolio.check;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import kerbfolio.job.Gate;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/**
 * A file of figures that regulations or the shop set, and of the evidence each gate asks for.
 *
 * @param limits key to figure; a check names the key, the set the figure
 * @param evidence gate to tier to the checks (or whole trades) it asks for, each tier adding to those below it
 */
public record RequirementSet(
        @Must @Means("name a job file calls it by") String set,
        @Must @Means("what it is") String title,

        @Means("edition of this file; raise it with every change") @Nullable
        String edition,

        @Means("document key to title and edition") @Nullable
        Map<String, Paper> documents,

        @Means("the figures") @Nullable Map<String, Entry> limits,

        @Means("what each gate asks for, tier by tier") @Nullable
        Map<String, Evidence> evidence) {

    /** A document the set quotes. */
    public record Paper(
            @Must @Means("title") String title,
            @Means("edition") @Nullable String edition) {}

    /** One figure. */
    public record Entry(
            @Must @Means("what it is, in words") String meaning,

            @Must @Means("at most, below, at least or above")
            Bound bound,

            @Must @Means("the figure") @In(value = "*", signed = true)
            Quantity value,

            @Must @Means("key of the document") String document,
            @Means("clause") @Nullable String clause,

            @Means("rule of this program, with no outside document") @Nullable
            Boolean ownRule,

            @Means("who read it in the document") @Nullable Read confirmed,
            @Means("anything to know about it") @Nullable String note) {}

    /** Who read a figure in the document itself. */
    public record Read(
            @Must @Means("who") String by,
            @Must @Means("edition read") String edition,
            @Must @Means("day") LocalDate date) {}

    /** What a gate asks for; a tier asks for its own list and those of the tiers before it. */
    public record Evidence(
            @Means("from the first tier on") @Nullable List<String> first,
            @Means("from the inspection tier on") @Nullable List<String> inspection,
            @Means("in the full tier") @Nullable List<String> full) {}

    /** The key a gate stands under in {@link #evidence}. */
    static String key(Gate gate) {
        return gate.toString();
    }
}
