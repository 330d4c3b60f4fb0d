package kerbfolio.job;

import java.time.LocalDate;
import java.util.List;
import kerbfolio.quantity.Quantity;
import kerbfolio.reading.In;
import kerbfolio.reading.Means;
import kerbfolio.reading.Must;
import org.jspecify.annotations.Nullable;

/** Something fitted during the conversion. */
public record Part(
        @Must @Means("name the rest of the file calls it by")
        String id,

        @Means("what it is, in shop words") @Nullable String name,
        @Means("what it does in the car") @Nullable Role role,
        @Means("maker") @Nullable String make,
        @Means("model") @Nullable String model,
        @Means("part number as written") @Nullable String partNumber,

        @Means("serial number as written, or unreadable") @Nullable
        String serial,

        @Means("firmware as written") @Nullable String firmware,

        @Means("id of what weighed it; leave out if the mass is stated") @Nullable
        String instrument,

        @Means("who states the mass, if nobody weighed it") @Nullable
        String massFrom,

        @Means("day it was weighed") @Nullable LocalDate date,
        @Means("its mass") @In("kg") @Nullable Quantity mass,
        @Means("where its centre of gravity sits") @Nullable Position position,

        @Means("id of the part it sits in; its mass is counted there") @Nullable
        String inside,

        @Means("its case") @Nullable Enclosure enclosure,
        @Means("its electrical ratings") @Nullable Electrical electrical,

        @Means("poles it opens, for what lies in the conductor: 1 or 2") @In("1") @Nullable
        Quantity poles,

        @Means("its connectors") List<Connector> connectors,
        @Means("ratings of a fuse") @Nullable Fuse fuse,
        @Means("ratings of a contactor") @Nullable Contactor contactor,
        @Means("the motor in it") @Nullable Motor motor,
        @Means("ratings of a charger") @Nullable ChargerRatings charger,
        @Means("where it is proved dead") @Nullable TestPoint testPoint) {
    public Part {
        connectors = Lists.orEmpty(connectors);
    }

    /** Its name, or its id where it has none. */
    public String title() {
        return name == null ? id : name;
    }

    /** Names of its terminals in the traction circuit; none where its role is not known or has none. */
    public List<String> terminals() {
        if (role == null || role.ports() == Role.Ports.NONE) {
            return List.of();
        }
        boolean hasSecondPole = poles != null && poles.number() == 2;
        return role.ports() == Role.Ports.TWO_POLES
                ? List.of("+", "-")
                : hasSecondPole ? List.of("1", "2", "3", "4") : List.of("1", "2");
    }
}
