package kerbfolio.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.car.Terminal;
import kerbfolio.figure.Stand.Point;
import org.jspecify.annotations.Nullable;

/**
 * Ways of the conductors over the grid: each the cheapest that is left, with bends, crossings and the company of others
 * made dear. A way is always found; where there is no room at all it runs over what is in its way.
 */
final class Wires {
    private static final int BEND = 3;
    private static final int CROSSING = 6;
    private static final int TOGETHER = 3;
    /** Up and down on the side of a frame. */
    private static final int ALONG = 20;

    private static final int BLOCKED = 300;
    private static final int[] ACROSS = {1, -1, 0, 0};
    private static final int[] DOWN = {0, 0, 1, -1};

    private final int width;
    private final int height;
    private final Ground ground;
    private final Map<Terminal, Integer> nets = new HashMap<>();
    private final List<Wire> wires = new ArrayList<>();

    /**
     * A conductor as it runs.
     *
     * @param label the room for its words; null where there is none
     */
    record Wire(Bond bond, int net, List<Point> points, Ground.@Nullable Label label) {}

    /** What a wire is called, from the longest form to the shortest. */
    interface Names {
        List<String> of(Bond bond);
    }

    Wires(CircuitGrid grid, Circuit circuit, Names names) {
        width = CircuitGrid.WIDTH + 1;
        height = grid.rows() + 2;
        ground = new Ground(width, height);
        List<Bond> bonds = circuit.links().stream()
                .flatMap(link -> circuit.bonds(link.id()).stream())
                .toList();
        for (Bond bond : bonds) {
            if (!nets.containsKey(bond.from())) {
                int net = nets.size() + 1;
                circuit.reach(bond.from(), other -> other.kind() == Bond.Kind.CABLE)
                        .forEach(terminal -> nets.put(terminal, net));
            }
        }
        for (Stand stand : grid.stands()) {
            stand.covered().forEach(point -> ground.solid[ground.node(point)] = true);
            if (stand.look() == Stand.Look.RAILS) {
                for (Terminal rail : circuit.terminals(stand.part().id())) {
                    stand.ends(rail)
                            .forEach(point -> ground.taken[1][ground.node(point)] = nets.getOrDefault(rail, -1));
                }
            }
        }
        grid.frames().forEach(this::keep);
        record Way(Bond bond, List<Point> from, List<Point> to) {}
        var ways = new ArrayList<Way>();
        for (Bond bond : bonds) {
            List<Point> from = ends(grid, bond.from());
            List<Point> to = ends(grid, bond.to());
            if (!from.isEmpty() && !to.isEmpty()) {
                ways.add(new Way(bond, from, to));
            }
        }
        ways.sort(Comparator.comparingInt(way -> distance(way.from(), way.to())));
        for (Way way : ways) {
            int net = nets.getOrDefault(way.bond().from(), 0);
            List<Point> points = route(way.from(), way.to(), net);
            ground.take(points, net);
            wires.add(new Wire(way.bond(), net, points, null));
        }
        name(names);
    }

    /** No wire and no words over the title of a frame, none along its sides, and no words over these. */
    private void keep(Frame frame) {
        for (int x = frame.left(); x <= frame.left() + Math.max(frame.title(), frame.right() - frame.left()); x++) {
            ground.lettered[ground.node(new Point(x, frame.top()))] = true;
        }
        for (int y = frame.top(); y <= frame.bottom(); y++) {
            ground.edge[ground.node(new Point(frame.left(), y))] = true;
            ground.edge[ground.node(new Point(frame.right(), y))] = true;
        }
    }

    /** One name for each cable, on the conductor with room for the longest; a number only where none has room. */
    private void name(Names names) {
        var byCable = new LinkedHashMap<String, List<Wire>>();
        wires.stream()
                .sorted(Comparator.<Wire>comparingInt(wire ->
                                wire.points().stream().mapToInt(Point::y).min().orElse(0))
                        .thenComparingInt(wire -> wire.points().get(0).x()))
                .forEach(wire -> byCable.computeIfAbsent(wire.bond().id(), id -> new ArrayList<>())
                        .add(wire));
        var keyed = new ArrayList<List<Wire>>();
        byCable.values().forEach(cable -> {
            if (!isPlaced(names.of(cable.get(0).bond()), cable)) {
                keyed.add(cable);
            }
        });
        int number = 1;
        for (List<Wire> cable : keyed) {
            number += isPlaced(List.of(String.valueOf(number)), cable) ? 1 : 0;
        }
    }

    private boolean isPlaced(List<String> words, List<Wire> cable) {
        for (String each : words) {
            for (Wire wire : cable) {
                Ground.Label label = ground.place(each, wire.points());
                if (label != null) {
                    wires.set(wires.indexOf(wire), new Wire(wire.bond(), wire.net(), wire.points(), label));
                    return true;
                }
            }
        }
        return false;
    }

    List<Wire> wires() {
        return wires;
    }

    /** Whether any conductor is recorded at a terminal. */
    boolean reaches(Terminal terminal) {
        return nets.containsKey(terminal);
    }

    private static List<Point> ends(CircuitGrid grid, Terminal terminal) {
        return grid.stand(terminal.part()).map(stand -> stand.ends(terminal)).orElse(List.of());
    }

    private static int distance(List<Point> from, List<Point> to) {
        int least = Integer.MAX_VALUE;
        for (Point a : from) {
            for (Point b : to) {
                least = Math.min(least, Math.abs(a.x() - b.x()) + 2 * Math.abs(a.y() - b.y()));
            }
        }
        return least;
    }

    /** The cheapest way; a state is a point and the direction it was reached in. */
    private List<Point> route(List<Point> from, List<Point> to, int net) {
        int[] cost = new int[2 * width * height];
        int[] before = new int[cost.length];
        Arrays.fill(cost, Integer.MAX_VALUE);
        Arrays.fill(before, -1);
        boolean[] goal = new boolean[width * height];
        to.forEach(point -> goal[ground.node(point)] = true);
        var open = new PriorityQueue<int[]>(
                Comparator.<int[]>comparingInt(state -> state[1]).thenComparingInt(state -> state[0]));
        for (Point point : from) {
            cost[2 * ground.node(point)] = 0;
            open.add(new int[] {2 * ground.node(point), 0});
        }
        while (!open.isEmpty()) {
            int[] next = open.remove();
            int state = next[0];
            if (next[1] > cost[state]) {
                continue;
            }
            if (goal[state / 2]) {
                return way(state, before);
            }
            int x = state / 2 % width;
            int y = state / 2 / width;
            for (int turn = 0; turn < ACROSS.length; turn++) {
                int atX = x + ACROSS[turn];
                int atY = y + DOWN[turn];
                if (atX < 0 || atY < 0 || atX >= width || atY >= height) {
                    continue;
                }
                int direction = turn / 2;
                int there = atY * width + atX;
                int price = next[1] + step(state, there, direction, net, goal[there]);
                int reached = 2 * there + direction;
                if (price < cost[reached]) {
                    cost[reached] = price;
                    before[reached] = state;
                    open.add(new int[] {reached, price});
                }
            }
        }
        throw new IllegalStateException("a grid without a way");
    }

    private int step(int state, int there, int direction, int net, boolean isGoal) {
        int here = state / 2;
        int price = direction == 0 ? 2 : 3;
        if (direction != state % 2) {
            price += BEND + (isOther(ground.taken[0][here], net) || isOther(ground.taken[1][here], net) ? BLOCKED : 0);
        }
        if (isGoal) {
            return price + (direction == 1 ? BEND : 0);
        }
        price += ground.edge[there] && direction == 1 ? ALONG : 0;
        price += ground.solid[there] || ground.lettered[there] ? BLOCKED : 0;
        price += isOther(ground.taken[direction][there], net)
                ? BLOCKED
                : ground.taken[direction][there] == net ? TOGETHER : 0;
        price += isOther(ground.taken[1 - direction][there], net) ? CROSSING : 0;
        return price;
    }

    private static boolean isOther(int taken, int net) {
        return taken != 0 && taken != net;
    }

    private List<Point> way(int last, int[] before) {
        var points = new ArrayList<Point>();
        for (int state = last; state >= 0; state = before[state]) {
            points.add(new Point(state / 2 % width, state / 2 / width));
        }
        Collections.reverse(points);
        return points;
    }
}
