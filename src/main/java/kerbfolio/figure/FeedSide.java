package kerbfolio.figure;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.figure.Columns.Column;
import kerbfolio.job.Link;
import kerbfolio.job.LinkKind;
import kerbfolio.job.Part;

/** What the junctions feed, junction by junction from above, and what lies between two of them. */
final class FeedSide {
    private final Car car;
    private final Columns columns;
    private final Levels levels;
    private final Map<String, Stand> stands = new LinkedHashMap<>();
    private final Map<String, Link> partners = new LinkedHashMap<>();
    private final Map<String, Zone> zones = new LinkedHashMap<>();
    private int rows = 1;

    /** The rows a junction and what it feeds have to themselves. */
    record Zone(int top, int end) {}

    FeedSide(Car car, Columns columns, Levels levels) {
        this.car = car;
        this.columns = columns;
        this.levels = levels;
        Junctions junctions = columns.junctions();
        var homes = new HashMap<String, String>();
        for (Part part : car.circuit().parts()) {
            homes.put(part.id(), junctions.of(part).map(Part::id).orElse(""));
        }
        for (String home : Stream.concat(junctions.all().stream().map(Part::id), Stream.of(""))
                .toList()) {
            int top = rows;
            zone(part -> home.equals(homes.get(part.id())));
            zones.put(home, new Zone(top, rows));
            rows += rows > top && !home.isEmpty() ? junctions.all().size() - 1 : 0;
        }
    }

    Map<String, Stand> stands() {
        return stands;
    }

    /** Cables from a block to what hangs beside it, by the id of the latter. */
    Map<String, Link> partners() {
        return partners;
    }

    Zone zone(Part junction) {
        return zones.getOrDefault(junction.id(), new Zone(1, rows));
    }

    int rows() {
        return rows;
    }

    private List<Part> in(Column column, Predicate<Part> isHere) {
        return columns.in(column).stream().filter(isHere).toList();
    }

    private void zone(Predicate<Part> isHere) {
        int first = rows;
        int least = rows;
        for (Column column : List.of(Column.AFTER_FIRST, Column.BEFORE_SECOND)) {
            int top = first + 1;
            for (Part part : levels.sorted(in(column, isHere))) {
                Stand stand = columns.stand(part);
                put(stand.at(stand.x(), top));
                top += stand.height() + 1;
                least = Math.max(least, top);
            }
        }
        consumers(isHere);
        rows = Math.max(rows, least);
    }

    /** Consumers without a fuse of their own first, then fuse by fuse, so that their wires do not cross. */
    private void consumers(Predicate<Part> isHere) {
        int first = rows;
        List<Part> branches = in(Column.BRANCH, isHere);
        Map<String, Double> order = new HashMap<>();
        List<Part> blocks = in(Column.CONSUMERS, isHere);
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
            put(columns.stand(block).at(columns.left(Column.CONSUMERS), rows));
            rows += Columns.BLOCK + 1;
            beside(block);
        }
        int free = first;
        for (Part branch : branches) {
            Stand stand = columns.stand(branch);
            int wanted = columns.joined(branch.id()).stream()
                    .flatMap(link -> Stream.of(Columns.end(link.from()), Columns.end(link.to())))
                    .flatMap(id -> Stream.ofNullable(stands.get(id)))
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
                                    Stand.lines(part.title(), Columns.INSIDE),
                                    columns.left(Column.CONSUMERS),
                                    rows + 1,
                                    2,
                                    false));
                            rows += 4;
                        });
            }
        }
    }

    private Optional<Part> part(String id) {
        return car.job().parts().stream().filter(part -> part.id().equals(id)).findFirst();
    }

    private void put(Stand stand) {
        stands.put(stand.part().id(), stand);
    }
}
