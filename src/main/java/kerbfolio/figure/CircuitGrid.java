package kerbfolio.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Potentials;
import kerbfolio.car.Terminal;
import kerbfolio.figure.Columns.Column;
import kerbfolio.job.Link;
import kerbfolio.job.LinkKind;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/**
 * Where every part of the circuit stands: in columns from the cells to what they feed, the highest voltage above, and
 * among equals beside what each is joined to.
 */
final class CircuitGrid {
    /** Steps of the grid across the figure. */
    static final int WIDTH = 81;

    private static final int BLOCK = 4;
    private static final int CELLS = 5;
    private static final int LETTERS = 16;
    private static final int INSIDE = 13;

    private final Car car;
    private final Circuit circuit;
    private final Potentials closed;
    private final Columns columns;
    private final Map<String, Stand> stands = new LinkedHashMap<>();
    private final List<Frame> frames = new ArrayList<>();
    private final Map<String, Link> partners = new LinkedHashMap<>();
    private int rows = 1;

    /** A box of the car around what sits inside it. */
    record Frame(Part part, Set<String> members) {}

    CircuitGrid(Car car) {
        this.car = car;
        this.circuit = car.circuit();
        var volts = new HashMap<>(car.pack().boxVolts());
        circuit.parts(Role.BATTERY).forEach(box -> volts.putIfAbsent(box.id(), 1.0));
        closed = circuit.potentials(List.of(), volts);
        columns = new Columns(circuit);
        packSide();
        int pack = rows;
        rows = 1;
        consumers();
        rows = Math.max(pack, rows);
        rails();
    }

    Collection<Stand> stands() {
        return stands.values();
    }

    Optional<Stand> stand(String id) {
        return Optional.ofNullable(stands.get(id));
    }

    List<Frame> frames() {
        return frames;
    }

    /** Cables from a block to what hangs beside it, by the id of the latter. */
    Map<String, Link> partners() {
        return partners;
    }

    int rows() {
        return rows;
    }

    /** How high its voltage is; nothing joined to it counts as lowest. */
    private double level(Part part) {
        return circuit.terminals(part.id()).stream()
                .mapToDouble(closed::level)
                .average()
                .orElse(-1);
    }

    private void packSide() {
        var groups = new LinkedHashMap<String, List<Part>>();
        for (Part part : circuit.parts()) {
            if (columns.isIn(part, Column.CELLS)
                    || columns.isIn(part, Column.PROTECTION)
                    || columns.isIn(part, Column.SWITCHING)) {
                groups.computeIfAbsent(outermost(part), key -> new ArrayList<>())
                        .add(part);
            }
        }
        groups.entrySet().stream()
                .sorted(Comparator.<Map.Entry<String, List<Part>>>comparingDouble(
                                group -> -Math.rint(height(group.getKey(), group.getValue())))
                        .thenComparingInt(group -> rank(group.getValue())))
                .forEach(group -> group(group.getKey(), group.getValue()));
    }

    /** How far along the circuit from the first cells the nearest of some parts lies. */
    private int rank(List<Part> members) {
        List<String> met = circuit.parts(Role.BATTERY).stream()
                .limit(1)
                .flatMap(box -> circuit.reach(Terminal.plus(box.id()), bond -> true).stream())
                .map(Terminal::part)
                .distinct()
                .toList();
        return members.stream()
                .mapToInt(part -> met.indexOf(part.id()))
                .filter(index -> index >= 0)
                .min()
                .orElse(met.size());
    }

    /** The outermost part it sits in; itself where it sits in none. */
    private String outermost(Part part) {
        var seen = new LinkedHashSet<String>();
        String at = part.id();
        while (seen.add(at)) {
            at = part(at).flatMap(each -> Optional.ofNullable(each.inside()))
                    .filter(around -> part(around).filter(Whereabouts::isCase).isPresent())
                    .orElse(at);
        }
        return at;
    }

    private double height(String id, List<Part> members) {
        return members.stream()
                .filter(part -> part.id().equals(id))
                .mapToDouble(this::level)
                .findFirst()
                .orElseGet(() ->
                        members.stream().mapToDouble(this::level).average().orElse(0));
    }

    /** Parts of one case: the higher half is stacked from above, the lower from below. */
    private void group(String id, List<Part> members) {
        boolean framed =
                members.size() > 1 || !members.get(0).id().equals(id) || Columns.role(members.get(0)) == Role.BATTERY;
        int top = rows + (framed ? 1 : 0);
        double middle = height(id, members);
        int tall = framed ? CELLS : 0;
        for (Column column : Column.values()) {
            tall = Math.max(
                    tall,
                    members.stream()
                            .filter(part -> columns.isIn(part, column))
                            .mapToInt(part -> stand(part).height())
                            .sum());
        }
        for (Column column : Column.values()) {
            int high = top;
            int low = top + tall;
            for (Part part : byLevel(members, column)) {
                Stand stand = stand(part);
                if (level(part) >= middle) {
                    put(stand.at(columns.left(column), high));
                    high += stand.height();
                }
            }
            List<Part> under = new ArrayList<>(byLevel(members, column));
            Collections.reverse(under);
            for (Part part : under) {
                Stand stand = stand(part);
                if (level(part) < middle) {
                    low -= stand.height();
                    put(stand.at(columns.left(column), low));
                }
            }
        }
        if (framed) {
            part(id).ifPresent(part -> {
                var ids = new LinkedHashSet<String>();
                members.forEach(member -> ids.add(member.id()));
                frames.add(new Frame(part, ids));
            });
        }
        rows = top + tall + 2;
    }

    private Optional<Part> part(String id) {
        return car.job().parts().stream().filter(part -> part.id().equals(id)).findFirst();
    }

    private List<Part> byLevel(List<Part> members, Column column) {
        return members.stream()
                .filter(part -> columns.isIn(part, column))
                .sorted(Comparator.comparingDouble(part -> -level(part)))
                .toList();
    }

    private void put(Stand stand) {
        stands.put(stand.part().id(), stand);
    }

    private Stand stand(Part part) {
        if (columns.isIn(part, Column.CELLS)) {
            return new Stand(part, Stand.Look.CELLS, List.of(), 0, 0, CELLS, false);
        }
        if (columns.isIn(part, Column.CONSUMERS)) {
            return new Stand(part, Stand.Look.BLOCK, Stand.lines(part.title(), INSIDE), 0, 0, BLOCK, false);
        }
        List<String> name = Stand.lines(part.title(), LETTERS);
        int poles = part.poles() != null && part.poles().number() == 2 ? 2 : 0;
        return new Stand(part, Stand.Look.IN_LINE, name, 0, 0, name.size() + 2 + poles, columns.isTurned(part));
    }

    /** Consumers without a fuse of their own first, then fuse by fuse, so that their wires do not cross. */
    private void consumers() {
        List<Part> branches = columns.in(Column.BRANCH);
        Map<String, Double> order = new HashMap<>();
        List<Part> blocks = columns.in(Column.CONSUMERS);
        for (Part block : blocks) {
            order.put(
                    block.id(),
                    columns.joined(block.id()).stream()
                            .flatMap(link -> Stream.of(Columns.end(link.from()), Columns.end(link.to())))
                            .mapToInt(id ->
                                    branches.stream().map(Part::id).toList().indexOf(id))
                            .filter(index -> index >= 0)
                            .average()
                            .orElse(columns.joined(block.id()).isEmpty() ? branches.size() : -1));
        }
        for (Part block : blocks.stream()
                .sorted(Comparator.comparingDouble(part -> order.getOrDefault(part.id(), 0.0)))
                .toList()) {
            put(stand(block).at(columns.left(Column.CONSUMERS), rows));
            rows += BLOCK + 1;
            beside(block);
        }
        int free = 1;
        for (Part branch : branches) {
            Stand stand = stand(branch);
            int wanted = columns.joined(branch.id()).stream()
                    .flatMap(link -> Stream.of(Columns.end(link.from()), Columns.end(link.to())))
                    .flatMap(id -> stand(id).stream())
                    .filter(other -> other.look() == Stand.Look.BLOCK)
                    .mapToInt(other -> other.row() - stand.name().size())
                    .min()
                    .orElse(free);
            int top = Math.max(free, wanted);
            put(stand.at(columns.left(Column.BRANCH), top));
            free = top + stand.height();
        }
        rows = Math.max(rows, free);
    }

    /** What a block turns or is plugged into stands under it. */
    private void beside(Part block) {
        for (Link link : car.job().links()) {
            boolean from = block.id().equals(Columns.end(link.from()));
            if ((link.kind() == LinkKind.PHASE || link.kind() == LinkKind.CHARGE)
                    && (from || block.id().equals(Columns.end(link.to())))) {
                String other = Columns.end(from ? link.to() : link.from());
                part(other)
                        .filter(part -> !stands.containsKey(other) && !columns.has(other))
                        .ifPresent(part -> {
                            partners.put(other, link);
                            put(new Stand(
                                    part,
                                    Stand.Look.BESIDE,
                                    Stand.lines(part.title(), INSIDE),
                                    columns.left(Column.CONSUMERS),
                                    rows + 1,
                                    2,
                                    false));
                            rows += 4;
                        });
            }
        }
    }

    private void rails() {
        columns.hub().ifPresent(part -> {
            put(new Stand(
                    part, Stand.Look.RAILS, List.of(part.title()), columns.left(Column.RAILS), 2, rows - 2, false));
            var members = new LinkedHashSet<String>();
            members.add(part.id());
            columns.in(Column.BRANCH).stream()
                    .filter(branch -> part.id().equals(branch.inside()))
                    .forEach(branch -> members.add(branch.id()));
            frames.add(new Frame(part, members));
        });
    }
}
