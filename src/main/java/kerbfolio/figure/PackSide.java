package kerbfolio.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Terminal;
import kerbfolio.figure.Columns.Column;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** Cells and what current passes before the first junction, case by case, the highest voltage above. */
final class PackSide {
    private final Car car;
    private final Circuit circuit;
    private final Columns columns;
    private final Levels levels;
    private final Map<String, Stand> stands = new LinkedHashMap<>();
    private final List<Frame> frames = new ArrayList<>();
    private int rows = 1;

    PackSide(Car car, Columns columns, Levels levels) {
        this.car = car;
        this.circuit = car.circuit();
        this.columns = columns;
        this.levels = levels;
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
                                group -> -Math.rint(middle(group.getKey(), group.getValue())))
                        .thenComparingInt(group -> rank(group.getValue())))
                .forEach(group -> group(group.getKey(), group.getValue()));
    }

    Map<String, Stand> stands() {
        return stands;
    }

    List<Frame> frames() {
        return frames;
    }

    int rows() {
        return rows;
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

    private double middle(String id, List<Part> members) {
        return members.stream()
                .filter(part -> part.id().equals(id))
                .mapToDouble(levels::of)
                .findFirst()
                .orElseGet(
                        () -> members.stream().mapToDouble(levels::of).average().orElse(0));
    }

    /** Parts of one case: the higher half is stacked from above, the lower from below. */
    private void group(String id, List<Part> members) {
        boolean framed =
                members.size() > 1 || !members.get(0).id().equals(id) || Columns.role(members.get(0)) == Role.BATTERY;
        int top = rows + (framed ? 1 : 0);
        double middle = middle(id, members);
        int tall = framed ? Columns.CELLS : 0;
        for (Column column : Column.values()) {
            tall = Math.max(
                    tall,
                    in(members, column).stream()
                            .mapToInt(part -> columns.stand(part).height())
                            .sum());
        }
        for (Column column : Column.values()) {
            int high = top;
            int low = top + tall;
            for (Part part : levels.sorted(in(members, column))) {
                Stand stand = columns.stand(part);
                if (levels.of(part) >= middle) {
                    put(stand.at(columns.left(column), high));
                    high += stand.height();
                }
            }
            List<Part> under = new ArrayList<>(levels.sorted(in(members, column)));
            Collections.reverse(under);
            for (Part part : under) {
                Stand stand = columns.stand(part);
                if (levels.of(part) < middle) {
                    low -= stand.height();
                    put(stand.at(columns.left(column), low));
                }
            }
        }
        if (framed) {
            part(id).ifPresent(part -> {
                List<Stand> inside = members.stream()
                        .flatMap(member -> Stream.ofNullable(stands.get(member.id())))
                        .toList();
                frames.add(Frame.around(part, inside).wide(columns.left(Column.RAILS) - 2));
            });
        }
        rows = top + tall + 2;
    }

    private Optional<Part> part(String id) {
        return car.job().parts().stream().filter(part -> part.id().equals(id)).findFirst();
    }

    private List<Part> in(List<Part> members, Column column) {
        return members.stream().filter(part -> columns.isIn(part, column)).toList();
    }

    private void put(Stand stand) {
        stands.put(stand.part().id(), stand);
    }
}
