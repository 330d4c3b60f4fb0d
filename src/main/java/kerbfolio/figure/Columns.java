package kerbfolio.figure;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
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
        /** Between two junctions: what is not in the second of them. */
        AFTER_FIRST(10, 2),
        BEFORE_SECOND(10, 9),
        RAILS_OF_SECOND(3, 2),
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

    /** Rows of a box of cells and of a consumer. */
    static final int CELLS = 5;

    static final int BLOCK = 4;
    /** Letters a name has room for in a line, over a part and in a consumer. */
    private static final int LETTERS = 16;

    static final int INSIDE = 13;

    private final Circuit circuit;
    private final Junctions junctions;
    private final Map<String, Column> columns = new LinkedHashMap<>();
    private final Map<Column, Integer> left = new EnumMap<>(Column.class);

    Columns(Circuit circuit) {
        this.circuit = circuit;
        junctions = new Junctions(circuit);
        choose();
        spread();
    }

    Junctions junctions() {
        return junctions;
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
        return joined(circuit, part);
    }

    static List<Link> joined(Circuit circuit, String part) {
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

    /** What lies in the conductors stands before a junction if current comes to it without passing that. */
    private void choose() {
        Set<String> before = junctions.before(junctions.all());
        Set<String> between = junctions.before(junctions.second());
        for (Part part : circuit.parts()) {
            columns.put(part.id(), column(part, before, between));
        }
    }

    private Column column(Part part, Set<String> before, Set<String> between) {
        Role role = role(part);
        if (role == Role.BATTERY) {
            return Column.CELLS;
        }
        if (role.ports() == Ports.TWO_POLES) {
            return junctions.second().contains(part)
                    ? Column.RAILS_OF_SECOND
                    : junctions.has(part) ? Column.RAILS : Column.CONSUMERS;
        }
        boolean guards = role == Role.FUSE || role == Role.DISCONNECT;
        if (junctions.all().isEmpty() || before.contains(part.id())) {
            return guards ? Column.PROTECTION : Column.SWITCHING;
        }
        if (junctions.second().isEmpty() || !between.contains(part.id())) {
            return Column.BRANCH;
        }
        boolean isInSecond =
                junctions.second().stream().anyMatch(junction -> junction.id().equals(part.inside()));
        boolean isInFirst =
                junctions.first().stream().anyMatch(junction -> junction.id().equals(part.inside()));
        return isInSecond || (!guards && !isInFirst) ? Column.BEFORE_SECOND : Column.AFTER_FIRST;
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

    /** A part as it is drawn in its column, in no row yet. */
    Stand stand(Part part) {
        if (isIn(part, Column.CELLS)) {
            return new Stand(part, Stand.Look.CELLS, List.of(), left(Column.CELLS), 0, CELLS, false);
        }
        if (isIn(part, Column.CONSUMERS)) {
            return new Stand(
                    part, Stand.Look.BLOCK, Stand.lines(part.title(), INSIDE), left(Column.CONSUMERS), 0, BLOCK, false);
        }
        List<String> name = Stand.lines(part.title(), LETTERS);
        int poles = part.poles() != null && part.poles().number() == 2 ? 2 : 0;
        return new Stand(
                part,
                Stand.Look.IN_LINE,
                name,
                left(columns.getOrDefault(part.id(), Column.CELLS)),
                0,
                name.size() + 2 + poles,
                isTurned(part));
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
