package kerbfolio.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.figure.Columns.Column;
import kerbfolio.job.Link;
import kerbfolio.job.Part;

/** Where every part of the circuit stands: from the cells by way of the junctions to what they feed. */
final class CircuitGrid {
    /** Steps of the grid across the figure. */
    static final int WIDTH = 81;

    private final Columns columns;
    private final FeedSide feed;
    private final Map<String, Stand> stands = new LinkedHashMap<>();
    private final List<Frame> frames;
    private final int rows;

    CircuitGrid(Car car) {
        columns = new Columns(car.circuit());
        var levels = new Levels(car);
        var pack = new PackSide(car, columns, levels);
        feed = new FeedSide(car, columns, levels);
        rows = Math.max(pack.rows(), feed.rows());
        stands.putAll(pack.stands());
        stands.putAll(feed.stands());
        frames = new ArrayList<>(pack.frames());
        columns.junctions().first().forEach(part -> rails(part, Column.RAILS));
        columns.junctions().second().forEach(part -> rails(part, Column.RAILS_OF_SECOND));
    }

    /** A junction alone before others has bars from top to foot. */
    private void rails(Part part, Column column) {
        Junctions junctions = columns.junctions();
        boolean isWhole = column == Column.RAILS && junctions.first().size() == 1;
        FeedSide.Zone zone = feed.zone(part);
        int top = isWhole ? 2 : zone.top() + 1;
        int end = isWhole ? rows : zone.end();
        var stand = new Stand(
                part,
                Stand.Look.RAILS,
                List.of(part.title()),
                columns.left(column),
                top,
                Math.max(Columns.BLOCK, end - top),
                false);
        stands.put(part.id(), stand);
        List<Column> beside = junctions.second().isEmpty()
                ? List.of(Column.BRANCH)
                : column == Column.RAILS ? List.of(Column.AFTER_FIRST) : List.of(Column.BEFORE_SECOND, Column.BRANCH);
        List<Stand> inside = beside.stream()
                .flatMap(each -> columns.in(each).stream())
                .filter(each -> part.id().equals(each.inside()))
                .flatMap(each -> stand(each.id()).stream())
                .toList();
        Column next = beside.contains(Column.AFTER_FIRST) ? Column.BEFORE_SECOND : Column.CONSUMERS;
        frames.add(Frame.around(
                        part, Stream.concat(Stream.of(stand), inside.stream()).toList())
                .wide(columns.left(next) - 2));
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
        return feed.partners();
    }

    int rows() {
        return rows;
    }
}
