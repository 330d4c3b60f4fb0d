package kerbfolio.car;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jgrapht.Graph;
import org.jspecify.annotations.Nullable;

/**
 * The voltage of every terminal against the others it hangs together with, while no current flows: conductors carry it
 * on unchanged, a box of cells adds its own. What hangs on no box floats and has none.
 */
public final class Potentials {
    private static final double DUST = 1e-6;

    /** Of each terminal: the group it belongs to, its voltage in it, and the boxes that make it, less those against. */
    private record Place(int group, double volts, Map<String, Integer> boxes) {}

    private final Map<Terminal, Place> places = new LinkedHashMap<>();
    private final Map<Integer, Set<String>> boxesOf = new LinkedHashMap<>();
    private final Bridges bridges;
    private @Nullable String contradiction;

    Potentials(Graph<Terminal, Bond> graph, Collection<String> open, Map<String, Double> boxes) {
        int group = 0;
        for (Terminal start : new TreeSet<>(graph.vertexSet())) {
            if (!places.containsKey(start)) {
                spread(graph, open, boxes, start, group++);
            }
        }
        bridges = new Bridges(boxes);
        for (Bond bond : graph.edgeSet()) {
            if (bond.kind() == Bond.Kind.CONSUMER && !open.contains(bond.id())) {
                Place from = Objects.requireNonNull(places.get(bond.from()));
                Place to = Objects.requireNonNull(places.get(bond.to()));
                bridges.add(bond.id(), from.group(), to.group(), less(from.boxes(), to.boxes()));
            }
        }
    }

    private void spread(
            Graph<Terminal, Bond> graph,
            Collection<String> open,
            Map<String, Double> boxes,
            Terminal start,
            int group) {
        var next = new ArrayDeque<Terminal>();
        places.put(start, new Place(group, 0, Map.of()));
        var joined = new TreeSet<String>();
        boxesOf.put(group, joined);
        next.add(start);
        while (!next.isEmpty()) {
            Terminal at = next.remove();
            Place here = Objects.requireNonNull(places.get(at));
            for (Bond bond : graph.edgesOf(at)) {
                if (open.contains(bond.id()) || bond.kind() == Bond.Kind.CONSUMER) {
                    continue;
                }
                Place there = beyond(bond, at, here, boxes);
                if (bond.kind() == Bond.Kind.SOURCE) {
                    joined.add(bond.id());
                }
                Place known = places.putIfAbsent(bond.beyond(at), there);
                if (known == null) {
                    next.add(bond.beyond(at));
                } else if (Math.abs(known.volts() - there.volts()) > DUST) {
                    contradiction = contradiction == null ? bond.id() : contradiction;
                }
            }
        }
    }

    private static Place beyond(Bond bond, Terminal at, Place here, Map<String, Double> boxes) {
        if (bond.kind() != Bond.Kind.SOURCE) {
            return here;
        }
        int way = at.equals(bond.from()) ? 1 : -1;
        return new Place(
                here.group(),
                here.volts() + way * boxes.getOrDefault(bond.id(), 0.0),
                less(here.boxes(), Map.of(bond.id(), -way)));
    }

    /** Boxes counted with their sign, less others. */
    static Map<String, Integer> less(Map<String, Integer> boxes, Map<String, Integer> others) {
        var sum = new TreeMap<>(boxes);
        others.forEach((box, times) -> sum.merge(box, -times, Integer::sum));
        sum.values().removeIf(times -> times == 0);
        return Collections.unmodifiableMap(sum);
    }

    /** Volts from one terminal to another; empty if nothing joins them. */
    public OptionalDouble between(Terminal a, Terminal b) {
        Place first = places.get(a);
        Place second = places.get(b);
        return first == null || second == null || first.group() != second.group()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.abs(first.volts() - second.volts()));
    }

    /**
     * The boxes that make the largest voltage which may stand between two terminals, counted with their sign, while any
     * consumers but one conduct; empty if nothing joins them even so.
     *
     * @param without a consumer that does not conduct
     */
    Optional<Map<String, Integer>> most(Terminal a, Terminal b, @Nullable String without) {
        Place first = places.get(a);
        Place second = places.get(b);
        return first == null || second == null
                ? Optional.empty()
                : bridges.most(first.group(), second.group(), less(second.boxes(), first.boxes()), without);
    }

    /** A part or link that joins what boxes of cells hold at different voltages: a short circuit; empty if none does. */
    public Optional<String> contradiction() {
        return Optional.ofNullable(contradiction);
    }

    /** Boxes of cells a terminal hangs on. */
    public Set<String> boxes(Terminal terminal) {
        Place place = places.get(terminal);
        return place == null ? Set.of() : boxesOf.getOrDefault(place.group(), Set.of());
    }

    /** The largest voltage between a terminal and anything it hangs together with. */
    public double swing(Terminal terminal) {
        Place place = places.get(terminal);
        return place == null
                ? 0
                : places.values().stream()
                        .filter(other -> other.group() == place.group())
                        .mapToDouble(other -> Math.abs(other.volts() - place.volts()))
                        .max()
                        .orElse(0);
    }

    /** Volts of a terminal above the lowest it hangs together with. */
    public double level(Terminal terminal) {
        Place place = places.get(terminal);
        return place == null
                ? 0
                : place.volts()
                        - places.values().stream()
                                .filter(other -> other.group() == place.group())
                                .mapToDouble(Place::volts)
                                .min()
                                .orElse(0);
    }
}
