package kerbfolio.figure;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.car.Terminal;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.Role.Ports;
import org.jspecify.annotations.Nullable;

/** In which column of the circuit drawing each part stands, by what it does, and where the columns lie. */
final class Columns {
    /** From left to right. */
    enum Column {
        CELLS(8, 0),
        PROTECTION(10, 3),
        SWITCHING(10, 6),
        RAILS(3, 8),
        BRANCH(10, 3),
        CONSUMERS(11, 9);

        private final int width;
        private final int share;

        /** Its width in grid steps, and how much of the room left over it has before it. */
        Column(int width, int share) {
            this.width = width;
            this.share = share;
        }
    }

    private final Circuit circuit;
    private final Optional<Part> hub;
    private final Map<String, Column> columns = new LinkedHashMap<>();
    private final Map<Column, Integer> left = new EnumMap<>(Column.class);

    Columns(Circuit circuit) {
        this.circuit = circuit;
        hub = circuit.parts(Role.JUNCTION_BOX).stream()
                .max(Comparator.comparingInt(part -> joined(part.id()).size()));
        choose();
        spread();
    }

    /** The junction all branches leave from; the one with most links. */
    Optional<Part> hub() {
        return hub;
    }

    boolean has(String part) {
        return columns.containsKey(part);
    }

    boolean isIn(Part part, Column column) {
        return columns.get(part.id()) == column;
    }

    /** Grid step where a column begins. */
    int left(Column column) {
        return left.getOrDefault(column, 0);
    }

    /** Conductors that end at a part. */
    List<Link> joined(String part) {
        return circuit.links().stream()
                .filter(link -> part.equals(end(link.from())) || part.equals(end(link.to())))
                .toList();
    }

    /** The part an end of a link lies at. */
    static String end(@Nullable String end) {
        return end == null ? "" : end.contains("/") ? end.substring(0, end.lastIndexOf('/')) : end;
    }

    /** Parts of a column, in the order of the job file. */
    List<Part> in(Column column) {
        return circuit.parts().stream()
                .filter(part -> columns.get(part.id()) == column)
                .toList();
    }

    /** What lies in the conductors stands before the junction if current reaches it from the cells without passing that. */
    private void choose() {
        Set<String> before = new HashSet<>();
        for (Part box : circuit.parts(Role.BATTERY)) {
            for (Terminal pole : List.of(Terminal.plus(box.id()), Terminal.minus(box.id()))) {
                circuit.reach(pole, bond -> bond.kind() != Bond.Kind.CONSUMER && !touchesHub(bond))
                        .forEach(terminal -> before.add(terminal.part()));
            }
        }
        for (Part part : circuit.parts()) {
            columns.put(part.id(), column(part, before));
        }
    }

    private Column column(Part part, Set<String> before) {
        Role role = role(part);
        if (role == Role.BATTERY) {
            return Column.CELLS;
        }
        if (role.ports() == Ports.TWO_POLES) {
            return hub.filter(part::equals).isPresent() ? Column.RAILS : Column.CONSUMERS;
        }
        if (hub.isPresent() && !before.contains(part.id())) {
            return Column.BRANCH;
        }
        return role == Role.FUSE || role == Role.DISCONNECT ? Column.PROTECTION : Column.SWITCHING;
    }

    private boolean touchesHub(Bond bond) {
        return hub.map(Part::id)
                .filter(id -> bond.from().part().equals(id) || bond.to().part().equals(id))
                .isPresent();
    }

    static Role role(Part part) {
        return part.role() == null ? Role.OTHER : part.role();
    }

    /** Columns nobody stands in give their room to the others. */
    private void spread() {
        int free = CircuitGrid.WIDTH - 1;
        int shares = 0;
        for (Column column : Column.values()) {
            if (columns.containsValue(column)) {
                free -= column.width;
                shares += column.share;
            }
        }
        int stood = 1;
        int given = 0;
        for (Column column : Column.values()) {
            if (columns.containsValue(column)) {
                given += column.share;
                left.put(column, stood + (shares == 0 ? 0 : given * free / shares));
                stood += column.width;
            }
        }
    }

    /** Whether what is joined to terminal 1 stands further right than what is joined to terminal 2. */
    boolean isTurned(Part part) {
        OptionalDouble one = side(part, "1");
        OptionalDouble two = side(part, "2");
        return one.isPresent() && two.isPresent() && one.getAsDouble() > two.getAsDouble();
    }

    private OptionalDouble side(Part part, String terminal) {
        return circuit.links().stream()
                .flatMap(link -> circuit.bonds(link.id()).stream())
                .flatMap(bond -> Stream.of(List.of(bond.from(), bond.to()), List.of(bond.to(), bond.from())))
                .filter(pair -> pair.get(0).equals(new Terminal(part.id(), terminal)))
                .flatMap(pair -> Stream.ofNullable(columns.get(pair.get(1).part())))
                .mapToInt(this::left)
                .average();
    }
}
