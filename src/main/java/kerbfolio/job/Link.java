package kerbfolio.job;

import java.util.List;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** What joins two parts. */
public record Link(
        @Must @Means("name the rest of the file calls it by")
        String id,

        @Must @Means("what it carries") LinkKind kind,

        @Means("part it begins at, with the terminal where it is one conductor: box/+") @Nullable
        String from,

        @Means("part it ends at, the same way") @Nullable String to,

        @Means("connectors an interlock loop passes, in order")
        List<String> through,

        @Means("conductor as marked: 50 mm², 1/0 AWG or 250 kcmil") @Nullable
        String size,

        @Means("copper, tinned-copper or aluminium") @Nullable
        Metal metal,

        @Means("pvc, xlpe or silicone") @Nullable Insulation insulation,
        @Means("length of one conductor") @In("m") @Nullable Quantity length,
        @Means("rated direct voltage") @In("V") @Nullable Quantity voltage,

        @Means("conductor temperature it is rated for") @In("°C") @Nullable
        Quantity maxTemperature,

        @Means("current it carries without end, as its maker states it") @In("A") @Nullable
        Quantity ampacity,

        @Means("ambient temperature that figure is for") @In("°C") @Nullable
        Quantity ampacityAt,

        @Means("hottest ambient on its way") @In(value = "°C", signed = true) @Nullable
        Quantity ambient,

        @Means("the data sheet, or who states its ratings") @Nullable
        String ratedBy,

        @Means("colour of its outer cover") @Nullable String colour,

        @Means("where it runs: cabin, luggage, engine-bay, underfloor or outside") @Nullable
        Place place,

        @Means("places it passes, in order") List<Position> route,

        @Means("what must come off before it is reached") @Nullable
        String access,

        @Means("anything else") @Nullable String note) {
    public Link {
        through = Lists.orEmpty(through);
        route = Lists.orEmpty(route);
    }

    /** The part an end lies on, whether or not a terminal is named: {@code box} of {@code box/+}. */
    public static String part(String end) {
        int slash = end.lastIndexOf('/');
        return slash < 0 ? end : end.substring(0, slash);
    }
}
