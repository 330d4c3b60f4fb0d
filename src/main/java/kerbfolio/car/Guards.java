package kerbfolio.car;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** Which fuse stands before what: found by opening one after the other and asking what a box of cells still feeds. */
public final class Guards {
    private final Circuit circuit;
    /** What was walked once need not be walked again. */
    private final Map<String, List<Guard>> found = new HashMap<>();

    private final Map<String, Boolean> shared = new HashMap<>();

    Guards(Circuit circuit) {
        this.circuit = circuit;
    }

    /**
     * One way current takes to the end of a cable; strings in parallel are several ways.
     *
     * @param boxes the boxes of cells it comes from
     * @param fuses the fuses all of it passes, one after the other; none if some of it passes none
     */
    public record Way(List<Part> boxes, List<Part> fuses) {}

    /**
     * What guards a cable from one of its ends.
     *
     * @param link the cable
     * @param end the terminal it is fed from there
     * @param ways the ways current comes there
     */
    public record Guard(Link link, Terminal end, List<Way> ways) {
        /** Every fuse that guards it from there, of all ways; empty if one way has none. */
        public List<Part> fuses() {
            return ways.stream().anyMatch(way -> way.fuses().isEmpty())
                    ? List.of()
                    : ways.stream()
                            .flatMap(way -> way.fuses().stream())
                            .distinct()
                            .toList();
        }
    }

    /**
     * What guards a cable, from each end that a box of cells feeds: current that comes from a box, through the cable,
     * across a consumer or another box behind it, and back. Each conductor of a cable counts by itself.
     */
    public List<Guard> of(Link link) {
        return found.computeIfAbsent(link.id(), id -> search(link));
    }

    private List<Guard> search(Link link) {
        var guards = new ArrayList<Guard>();
        for (Bond cable : circuit.bonds(link.id())) {
            for (Terminal end : List.of(cable.from(), cable.to())) {
                var byFuses = new LinkedHashMap<List<Part>, List<Part>>();
                for (Part box : circuit.parts(Role.BATTERY)) {
                    if (feeds(end, cable, box, bond -> true)) {
                        byFuses.computeIfAbsent(fuses(end, cable, box), fuses -> new ArrayList<>())
                                .add(box);
                    }
                }
                if (!byFuses.isEmpty()) {
                    var ways = new ArrayList<Way>();
                    byFuses.forEach((fuses, boxes) -> ways.add(new Way(List.copyOf(boxes), fuses)));
                    guards.add(new Guard(link, end, List.copyOf(ways)));
                }
            }
        }
        return List.copyOf(guards);
    }

    private List<Part> fuses(Terminal end, Bond cable, Part box) {
        return circuit.parts(Role.FUSE).stream()
                .filter(fuse -> !feeds(end, cable, box, bond -> !bond.id().equals(fuse.id())))
                .toList();
    }

    /** Whether current of a box reaches the end of a cable, and finds behind the cable a way back to the box. */
    private boolean feeds(Terminal end, Bond cable, Part box, Predicate<Bond> conducts) {
        Set<Terminal> near = circuit.reach(
                end,
                bond -> conducts.test(bond)
                        && !bond.equals(cable)
                        && bond.kind().isConductor());
        for (Bond source : circuit.bonds(box.id())) {
            Predicate<Bond> elsewhere = bond -> conducts.test(bond)
                    && !bond.equals(cable)
                    && !bond.equals(source)
                    && bond.kind() != Bond.Kind.CONSUMER
                    && !near.contains(bond.from())
                    && !near.contains(bond.to());
            for (Terminal pole : List.of(source.from(), source.to())) {
                if (near.contains(pole)) {
                    Set<Terminal> back = circuit.reach(source.beyond(pole), elsewhere);
                    Set<Terminal> behind = circuit.reach(cable.beyond(end), elsewhere);
                    if (closes(behind, back)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Whether two sides meet, or some consumer lies between them. */
    private boolean closes(Set<Terminal> one, Set<Terminal> other) {
        return one.stream().anyMatch(other::contains)
                || circuit.bonds().stream()
                        .filter(bond -> bond.kind() == Bond.Kind.CONSUMER)
                        .anyMatch(bond -> (one.contains(bond.from()) && other.contains(bond.to()))
                                || (one.contains(bond.to()) && other.contains(bond.from())));
    }

    /** Whether what has this id carries the current of some boxes only: it lies in one of several strings. */
    public boolean isOfOneString(String id) {
        return shared.computeIfAbsent(id, this::feedsSomeBoxes);
    }

    private boolean feedsSomeBoxes(String id) {
        List<Part> live = circuit.parts(Role.BATTERY).stream()
                .filter(box -> isInLoop(box, bond -> true))
                .toList();
        long without = live.stream()
                .filter(box -> isInLoop(box, bond -> !bond.id().equals(id)))
                .count();
        return without > 0 && without < live.size();
    }

    private boolean isInLoop(Part box, Predicate<Bond> conducts) {
        return circuit.bonds(box.id()).stream()
                .anyMatch(source -> circuit.reach(source.from(), bond -> conducts.test(bond) && !bond.equals(source))
                        .contains(source.to()));
    }

    /**
     * Fuses of its own for each box of cells: it feeds no loop without one, no other box and no consumer lies between,
     * and no other box is nearer. A fuse midway between two boxes counts for the one that has fewer.
     */
    public Map<Part, Set<Part>> ownFuses() {
        var own = new LinkedHashMap<Part, Set<Part>>();
        var away = new LinkedHashMap<Part, Map<Part, Integer>>();
        for (Part box : circuit.parts(Role.BATTERY)) {
            own.put(box, new LinkedHashSet<>());
            Map<Terminal, Integer> steps = steps(box);
            circuit.parts(Role.FUSE).stream()
                    .filter(fuse -> isInLoop(box, bond -> true)
                            && !isInLoop(box, bond -> !bond.id().equals(fuse.id())))
                    .forEach(fuse -> circuit.terminals(fuse.id()).stream()
                            .filter(steps::containsKey)
                            .mapToInt(terminal -> steps.getOrDefault(terminal, 0))
                            .min()
                            .ifPresent(least -> away.computeIfAbsent(fuse, key -> new LinkedHashMap<>())
                                    .put(box, least)));
        }
        away.entrySet().stream()
                .sorted((a, b) -> Integer.compare(
                        nearest(a.getValue()).size(), nearest(b.getValue()).size()))
                .forEach(entry -> nearest(entry.getValue()).stream()
                        .min((a, b) -> Integer.compare(
                                own.getOrDefault(a, Set.of()).size(),
                                own.getOrDefault(b, Set.of()).size()))
                        .ifPresent(box ->
                                own.getOrDefault(box, new LinkedHashSet<>()).add(entry.getKey())));
        return own;
    }

    private static List<Part> nearest(Map<Part, Integer> away) {
        int least = away.values().stream().mapToInt(Integer::intValue).min().orElse(0);
        return away.entrySet().stream()
                .filter(entry -> entry.getValue() == least)
                .map(Map.Entry::getKey)
                .toList();
    }

    /** How many conductors lie between a box of cells and each terminal they reach. */
    private Map<Terminal, Integer> steps(Part box) {
        var steps = new HashMap<Terminal, Integer>();
        Set<Terminal> edge = new LinkedHashSet<>(circuit.terminals(box.id()));
        for (int step = 0; !edge.isEmpty(); step++) {
            for (Terminal terminal : edge) {
                steps.put(terminal, step);
            }
            edge = edge.stream()
                    .flatMap(terminal -> circuit.bonds().stream()
                            .filter(bond -> bond.kind().isConductor())
                            .flatMap(bond -> bond.from().equals(terminal)
                                    ? Stream.of(bond.to())
                                    : bond.to().equals(terminal) ? Stream.of(bond.from()) : Stream.empty()))
                    .filter(terminal -> !steps.containsKey(terminal))
                    .collect(Collectors.toCollection(LinkedHashSet::new));
        }
        return steps;
    }
}
