package kerbfolio.car;

import java.util.ArrayList;
import java.util.List;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.Role.Ports;

/**
 * What lets current pass between two terminals.
 *
 * @param kind what it is
 * @param id of the link or the part
 * @param from one end; the minus pole of a source
 * @param to the other end; the plus pole of a source
 */
public record Bond(Kind kind, String id, Terminal from, Terminal to) {
    /** What lets current pass. */
    public enum Kind {
        /** A cable or busbar. */
        CABLE,
        FUSE,
        CONTACTOR,
        DISCONNECT,
        /** A resistor or sensor in the conductor. */
        IN_LINE,
        /** A box of cells. */
        SOURCE,
        /** Whatever lies between the poles and takes or gives current. */
        CONSUMER;

        /** Whether both its ends have the same voltage while no current flows. */
        boolean isConductor() {
            return this != SOURCE && this != CONSUMER;
        }
    }

    /** What lies between the terminals of a part: source or consumer between the poles, or a conductor for each pole it parts. */
    static List<Bond> of(Part part, Role role) {
        String id = part.id();
        if (role.ports() == Ports.TWO_POLES) {
            Kind kind = role == Role.BATTERY ? Kind.SOURCE : Kind.CONSUMER;
            return List.of(new Bond(kind, id, Terminal.minus(id), Terminal.plus(id)));
        }
        Kind kind = switch (role) {
            case FUSE -> Kind.FUSE;
            case CONTACTOR -> Kind.CONTACTOR;
            case DISCONNECT -> Kind.DISCONNECT;
            default -> Kind.IN_LINE;
        };
        var bonds = new ArrayList<Bond>();
        bonds.add(new Bond(kind, id, new Terminal(id, "1"), new Terminal(id, "2")));
        if (part.poles() != null && part.poles().number() == 2) {
            bonds.add(new Bond(kind, id, new Terminal(id, "3"), new Terminal(id, "4")));
        }
        return bonds;
    }

    /** A link that names no terminals joins both poles. */
    static List<Bond> of(Link link) {
        String from = link.from();
        String to = link.to();
        if (from == null || to == null) {
            return List.of();
        }
        if (from.contains("/") && to.contains("/")) {
            return List.of(new Bond(Kind.CABLE, link.id(), Terminal.of(from), Terminal.of(to)));
        }
        return List.of(
                new Bond(Kind.CABLE, link.id(), Terminal.plus(from), Terminal.plus(to)),
                new Bond(Kind.CABLE, link.id(), Terminal.minus(from), Terminal.minus(to)));
    }

    /** The end that is not this one. */
    Terminal beyond(Terminal end) {
        return end.equals(from) ? to : from;
    }
}
