package kerbfolio.car;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Consumers between groups of terminals that only they join. Whatever their resistances, the voltage they let stand
 * between two groups is a mean of what single chains of them would let stand (Kirchhoff's trees), so the largest is that
 * of a chain.
 */
final class Bridges {
    /** More chains than any car has; a circuit with more is answered by all its boxes in series, which is never too low. */
    private static final int MOST = 10_000;

    private static final int LONGEST = 200;

    /** One side of a consumer: where it leads and what the voltage there is more by. */
    private record Way(String consumer, int to, Map<String, Integer> step) {}

    private final Map<String, Double> boxes;
    private final Map<Integer, List<Way>> ways = new LinkedHashMap<>();

    Bridges(Map<String, Double> boxes) {
        this.boxes = Map.copyOf(boxes);
    }

    /** A consumer between two groups; the step is what its ends lie apart, each in its own group. */
    void add(String consumer, int from, int to, Map<String, Integer> step) {
        if (from != to) {
            ways.computeIfAbsent(from, group -> new ArrayList<>()).add(new Way(consumer, to, step));
            ways.computeIfAbsent(to, group -> new ArrayList<>())
                    .add(new Way(consumer, from, Potentials.less(Map.of(), step)));
        }
    }

    /** The largest voltage between two groups, of any chain of consumers; empty if there is no chain. */
    Optional<Map<String, Integer>> most(int from, int to, Map<String, Integer> apart, @Nullable String without) {
        var walk = new Walk(to, without);
        walk.go(from, apart);
        if (walk.steps <= MOST) {
            return Optional.ofNullable(walk.most);
        }
        var all = new LinkedHashMap<String, Integer>();
        boxes.keySet().forEach(box -> all.put(box, 1));
        return Optional.of(all);
    }

    private double volts(Map<String, Integer> sum) {
        return Math.abs(sum.entrySet().stream()
                .mapToDouble(box -> box.getValue() * boxes.getOrDefault(box.getKey(), 0.0))
                .sum());
    }

    private final class Walk {
        private final int to;
        private final @Nullable String without;
        private final Set<Integer> passed = new HashSet<>();
        private int steps;
        private @Nullable Map<String, Integer> most;

        Walk(int to, @Nullable String without) {
            this.to = to;
            this.without = without;
        }

        void go(int at, Map<String, Integer> apart) {
            if (at == to) {
                most = most == null || volts(apart) > volts(most) ? apart : most;
                return;
            }
            passed.add(at);
            steps += passed.size() > LONGEST ? MOST : 0;
            var taken = new HashSet<Map.Entry<Integer, Map<String, Integer>>>();
            for (Way way : ways.getOrDefault(at, List.of())) {
                boolean isNew = !way.consumer().equals(without)
                        && !passed.contains(way.to())
                        && taken.add(Map.entry(way.to(), way.step()));
                if (isNew && steps++ <= MOST) {
                    go(way.to(), Potentials.less(apart, Potentials.less(Map.of(), way.step())));
                }
            }
            passed.remove(at);
        }
    }
}
