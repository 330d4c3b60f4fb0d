package kerbfolio.car;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.jgrapht.Graph;

/**
 * The voltage of every terminal against the others it hangs together with, while no current flows: conductors carry it
 * on unchanged, a box of cells adds its own. What hangs on no box floats and has none.
 */
public final class Potentials {
    /** Of each terminal: the group it belongs to, its voltage in it, and the boxes of the group. */
    private record Place(int group, double volts) {}

    private final Map<Terminal, Place> places = new LinkedHashMap<>();
    private final Map<Integer, Set<String>> boxesOf = new LinkedHashMap<>();

    Potentials(Graph<Terminal, Bond> graph, Collection<String> open, Map<String, Double> boxes) {
        int group = 0;
        for (Terminal start : new TreeSet<>(graph.vertexSet())) {
            if (!places.containsKey(start)) {
                spread(graph, open, boxes, start, group++);
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
        places.put(start, new Place(group, 0));
        var joined = new TreeSet<String>();
        boxesOf.put(group, joined);
        next.add(start);
        while (!next.isEmpty()) {
            Terminal at = next.remove();
            double volts = Objects.requireNonNull(places.get(at)).volts();
            for (Bond bond : graph.edgesOf(at)) {
                if (open.contains(bond.id()) || bond.kind() == Bond.Kind.CONSUMER) {
                    continue;
                }
                double step = 0;
                if (bond.kind() == Bond.Kind.SOURCE) {
                    joined.add(bond.id());
                    step = boxes.getOrDefault(bond.id(), 0.0) * (at.equals(bond.from()) ? 1 : -1);
                }
                Terminal beyond = bond.beyond(at);
                if (places.putIfAbsent(beyond, new Place(group, volts + step)) == null) {
                    next.add(beyond);
                }
            }
        }
    }

    /** Volts from one terminal to another; empty if nothing joins them. */
    public OptionalDouble between(Terminal a, Terminal b) {
        Place first = places.get(a);
        Place second = places.get(b);
        return first == null || second == null || first.group() != second.group()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.abs(first.volts() - second.volts()));
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
}
