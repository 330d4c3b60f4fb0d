package kerbfolio.car;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.job.Job;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.Role.Ports;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.AsSubgraph;
import org.jgrapht.graph.Multigraph;

/**
 * The direct-current circuit as it was recorded: terminals joined by links, by what lies in the conductors, by boxes of
 * cells and by consumers. It knows only what somebody wrote down.
 */
public final class Circuit {
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Map<String, Link> links = new LinkedHashMap<>();
    private final Graph<Terminal, Bond> graph = new Multigraph<>(Bond.class);
    private final Map<String, Set<String>> loops = new HashMap<>();

    Circuit(Job job) {
        for (Part part : job.parts()) {
            Role role = part.role();
            if (role != null && role.ports() != Ports.NONE && takesPart(part, role, job)) {
                parts.put(part.id(), part);
                Bond.of(part, role).forEach(this::add);
            }
        }
        for (Link link : job.links()) {
            if (link.kind().isTraction()) {
                links.put(link.id(), link);
                Bond.of(link).forEach(this::add);
            }
        }
    }

    /** An inlet for alternating current and a motor behind an inverter stand beside the circuit. */
    private static boolean takesPart(Part part, Role role, Job job) {
        return (role != Role.INLET && role != Role.DRIVE_UNIT)
                || job.links().stream()
                        .filter(link -> link.kind().isTraction())
                        .flatMap(link -> Stream.of(String.valueOf(link.from()), String.valueOf(link.to())))
                        .anyMatch(end -> Link.part(end).equals(part.id()));
    }

    private void add(Bond bond) {
        if (!bond.from().equals(bond.to())) {
            graph.addVertex(bond.from());
            graph.addVertex(bond.to());
            graph.addEdge(bond.from(), bond.to(), bond);
        }
    }

    /** Whether any link of the circuit is recorded; without one nothing is known of what joins what. */
    public boolean isRecorded() {
        return !links.isEmpty();
    }

    /** Parts with terminals, in the order of the job file. */
    public List<Part> parts() {
        return List.copyOf(parts.values());
    }

    public List<Part> parts(Role role) {
        return parts.values().stream().filter(part -> part.role() == role).toList();
    }

    public Optional<Part> part(String id) {
        return Optional.ofNullable(parts.get(id));
    }

    /** Cables and busbars, in the order of the job file. */
    public List<Link> links() {
        return List.copyOf(links.values());
    }

    public List<Bond> bonds() {
        return List.copyOf(graph.edgeSet());
    }

    /** What lies between the terminals of a part; a busbar or cable for a link. */
    public List<Bond> bonds(String id) {
        return graph.edgeSet().stream().filter(bond -> bond.id().equals(id)).toList();
    }

    public List<Terminal> terminals(String part) {
        return graph.vertexSet().stream()
                .filter(terminal -> terminal.part().equals(part))
                .sorted()
                .toList();
    }

    /** Every terminal current can reach from one, through bonds that conduct. */
    public Set<Terminal> reach(Terminal start, Predicate<Bond> conducts) {
        var reached = new LinkedHashSet<Terminal>();
        var next = new ArrayDeque<Terminal>();
        if (graph.containsVertex(start)) {
            next.add(start);
        }
        while (!next.isEmpty()) {
            Terminal at = next.remove();
            if (reached.add(at)) {
                graph.edgesOf(at).stream()
                        .filter(conducts)
                        .map(bond -> bond.beyond(at))
                        .forEach(next::add);
            }
        }
        return reached;
    }

    /** Terminals of one voltage with this one, with some parts open; every contactor not among them counts as closed. */
    public Set<Terminal> net(Terminal terminal, Collection<String> open) {
        return reach(terminal, bond -> bond.kind().isConductor() && !open.contains(bond.id()));
    }

    /** Ids of links and parts on a shortest way of conductors between two terminals, with everything closed. */
    public List<String> way(Terminal from, Terminal to) {
        Set<Bond> conductors = graph.edgeSet().stream()
                .filter(bond -> bond.kind().isConductor())
                .collect(Collectors.toSet());
        var path = BFSShortestPath.findPathBetween(new AsSubgraph<>(graph, graph.vertexSet(), conductors), from, to);
        return path == null
                ? List.of()
                : path.getEdgeList().stream().map(Bond::id).toList();
    }

    /** Ids of links and parts the current between a consumer and the boxes of cells passes, the boxes among them. */
    public Set<String> loop(Part consumer) {
        return loops.computeIfAbsent(consumer.id(), id -> search(consumer));
    }

    private Set<String> search(Part consumer) {
        Graph<Terminal, Bond> loop = new Multigraph<>(Bond.class);
        graph.edgeSet().stream()
                .filter(bond -> bond.kind() != Bond.Kind.CONSUMER || bond.id().equals(consumer.id()))
                .filter(bond -> !isPrecharge(bond))
                .forEach(bond -> {
                    loop.addVertex(bond.from());
                    loop.addVertex(bond.to());
                    loop.addEdge(bond.from(), bond.to(), bond);
                });
        var passed = new LinkedHashSet<String>();
        for (Graph<Terminal, Bond> block : new BiconnectivityInspector<>(loop).getBlocks()) {
            Set<Bond> bonds = block.edgeSet();
            boolean isOn = bonds.stream().anyMatch(bond -> bond.id().equals(consumer.id()))
                    && bonds.stream().anyMatch(bond -> bond.kind() == Bond.Kind.SOURCE);
            if (isOn) {
                bonds.forEach(bond -> passed.add(bond.id()));
            }
        }
        passed.remove(consumer.id());
        return inOrder(passed);
    }

    /** Ids in the order of the job file, parts first, so that no page depends on how a graph is stored. */
    private Set<String> inOrder(Set<String> ids) {
        var ordered = new LinkedHashSet<String>();
        Stream.concat(parts.keySet().stream(), links.keySet().stream())
                .filter(ids::contains)
                .forEach(ordered::add);
        return ordered;
    }

    private boolean isPrecharge(Bond bond) {
        Part part = parts.get(bond.id());
        return part != null && part.role() == Role.PRECHARGE_RESISTOR;
    }

    /** Parts with a terminal that no path joins to a box of cells, with everything closed. */
    public List<Part> islands() {
        Set<Terminal> fed = new LinkedHashSet<>();
        parts(Role.BATTERY).forEach(box -> fed.addAll(reach(Terminal.plus(box.id()), bond -> true)));
        return parts.values().stream()
                .filter(part -> terminals(part.id()).stream().noneMatch(fed::contains))
                .toList();
    }

    /** Parts whose two poles some conductor joins, with everything closed. */
    public List<Part> shorted() {
        return parts.values().stream()
                .filter(part -> part.role() != null && part.role().ports() == Ports.TWO_POLES)
                .filter(part -> net(Terminal.plus(part.id()), Set.of()).contains(Terminal.minus(part.id())))
                .toList();
    }

    /**
     * Parts whose two poles hang on the same two nets: one bus, which charges and discharges as one.
     *
     * @param parts at least one, in the order of the job file
     */
    public record Bus(List<Part> parts) {
        public boolean has(String id) {
            return parts.stream().anyMatch(part -> part.id().equals(id));
        }

        @Override
        public String toString() {
            return String.join(" + ", parts.stream().map(Part::id).toList());
        }
    }

    /** The buses that are left when some parts are open; every contactor not among them counts as closed. */
    public List<Bus> buses(Collection<String> open) {
        var byNets = new LinkedHashMap<List<Set<Terminal>>, List<Part>>();
        for (Part part : parts.values()) {
            if (part.role() != null
                    && part.role().ports() == Ports.TWO_POLES
                    && part.role() != Role.BATTERY
                    && graph.containsVertex(Terminal.plus(part.id()))) {
                List<Set<Terminal>> nets =
                        List.of(net(Terminal.plus(part.id()), open), net(Terminal.minus(part.id()), open));
                byNets.computeIfAbsent(nets, key -> new ArrayList<>()).add(part);
            }
        }
        return byNets.values().stream().map(list -> new Bus(List.copyOf(list))).toList();
    }

    /** Ids of what can be opened by a hand: service disconnects. */
    public List<Part> disconnects() {
        return parts(Role.DISCONNECT);
    }

    public List<Part> contactors() {
        return parts(Role.CONTACTOR);
    }

    /** Voltages that are left with some parts open; every contactor not among them counts as welded closed. */
    public Potentials potentials(Collection<String> open, Map<String, Double> boxes) {
        return new Potentials(graph, open, boxes);
    }
}
