package kerbfolio.figure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.car.Terminal;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** The junction boxes drawn as a bus, a bar for each pole, in the order the current comes to them. */
final class Junctions {
    private final Circuit circuit;
    /** Current comes to these from the cells without passing another. */
    private final List<Part> first = new ArrayList<>();

    private final List<Part> second = new ArrayList<>();

    Junctions(Circuit circuit) {
        this.circuit = circuit;
        List<Part> all = circuit.parts(Role.JUNCTION_BOX).stream()
                .filter(part -> Columns.joined(circuit, part.id()).size() > 1)
                .toList();
        for (Part part : all) {
            Set<Terminal> reached =
                    fromCells(all.stream().filter(other -> !other.equals(part)).toList());
            (reached.containsAll(circuit.terminals(part.id())) ? first : second).add(part);
        }
        if (first.isEmpty()) {
            first.addAll(second);
            second.clear();
        }
    }

    List<Part> first() {
        return first;
    }

    /** Those that others feed. */
    List<Part> second() {
        return second;
    }

    /** What others feed comes first. */
    List<Part> all() {
        return Stream.concat(second.stream(), first.stream()).toList();
    }

    boolean has(Part part) {
        return first.contains(part) || second.contains(part);
    }

    /** Parts current comes to from the cells without passing some others. */
    Set<String> before(Collection<Part> others) {
        var before = new HashSet<String>();
        fromCells(others).forEach(terminal -> before.add(terminal.part()));
        return before;
    }

    private Set<Terminal> fromCells(Collection<Part> others) {
        var reached = new HashSet<Terminal>();
        for (Part box : circuit.parts(Role.BATTERY)) {
            for (Terminal pole : List.of(Terminal.plus(box.id()), Terminal.minus(box.id()))) {
                reached.addAll(circuit.reach(pole, clearOf(others).and(bond -> bond.kind() != Bond.Kind.CONSUMER)));
            }
        }
        return reached;
    }

    private static Predicate<Bond> clearOf(Collection<Part> others) {
        Set<String> ids = new HashSet<>();
        others.forEach(part -> ids.add(part.id()));
        return bond ->
                !ids.contains(bond.from().part()) && !ids.contains(bond.to().part());
    }

    /** The junction a part hangs on; of two the one further from the cells. */
    Optional<Part> of(Part part) {
        List<Terminal> ends = circuit.terminals(part.id());
        return all().stream()
                .filter(junction -> {
                    var others = new ArrayList<>(all());
                    others.remove(junction);
                    return circuit.terminals(junction.id()).stream()
                            .flatMap(rail -> circuit
                                    .reach(
                                            rail,
                                            clearOf(others)
                                                    .and(bond -> bond.kind() != Bond.Kind.CONSUMER
                                                            && bond.kind() != Bond.Kind.SOURCE))
                                    .stream())
                            .anyMatch(ends::contains);
                })
                .findFirst();
    }
}
