package kerbfolio.car;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.Role.Ports;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/**
 * What may stay live while some parts are open. Every contactor counts as welded closed, every fuse as whole, and a
 * consumer as conducting wherever that makes it worse.
 */
public final class LiveParts {
    static final Formula LEFT = Formula.of("U_l = sum(U_a) - sum(U_b)")
            .giving("voltage that may stay", "V")
            .each("U_a", "highest voltage of a box passed from minus to plus", "V")
            .each("U_b", "highest voltage of a box passed the other way", "V")
            .from(Source.CIRCUITS.clause("sources in series"))
            .build();

    private final Circuit circuit;
    private final TractionPack pack;
    private final Set<String> open;
    private final Potentials potentials;
    private final List<Absent> unknown;

    LiveParts(Circuit circuit, TractionPack pack, Collection<String> open) {
        this.circuit = circuit;
        this.pack = pack;
        this.open = new LinkedHashSet<>(open);
        this.potentials = circuit.potentials(open, pack.boxVolts());
        this.unknown = pack.missingBoxes(circuit.parts(Role.BATTERY));
    }

    /** Volts that may stay between the poles of a part with two of them. */
    public Term betweenPoles(Part part) {
        return between(
                "voltage between the poles of " + part.title(),
                Terminal.minus(part.id()),
                Terminal.plus(part.id()),
                part.id());
    }

    /** The largest voltage that may stay between any two of a part's terminals, such as those of an open disconnect. */
    public Term betweenTerminals(Part part) {
        List<Terminal> terminals = circuit.terminals(part.id());
        String name = "voltage between the terminals of " + part.title();
        Term most = none(part.id(), name);
        for (Terminal a : terminals) {
            for (Terminal b : terminals.subList(terminals.indexOf(a) + 1, terminals.size())) {
                Term term = between(name, a, b, null);
                if (term.amount().isEmpty()) {
                    return term;
                }
                most = volts(term) > volts(most) ? term : most;
            }
        }
        return most;
    }

    private static double volts(Term term) {
        return term.amount().map(amount -> amount.si()).orElse(Double.NaN);
    }

    private Term between(String name, Terminal a, Terminal b, @Nullable String without) {
        Optional<String> contradiction = potentials.contradiction();
        if (unknown.isEmpty() && contradiction.isPresent()) {
            String why = contradiction.get() + " joins what the boxes of cells hold at different voltages";
            return new Absent("links", name, Unit.of("V"), why);
        }
        Optional<Map<String, Integer>> boxes = potentials.most(a, b, without);
        if (boxes.isPresent() && !unknown.isEmpty()) {
            return unknown.get(0);
        }
        return boxes.map(sum -> left(name, a.part(), sum)).orElseGet(() -> none(a.part(), name));
    }

    private static Term none(String part, String name) {
        return Evidence.solved(
                "parts[" + part + "]", name, 0, "V", "no recorded way through a box of cells joins them");
    }

    private Term left(String name, String part, Map<String, Integer> boxes) {
        if (boxes.isEmpty()) {
            return Evidence.solved(
                    "parts[" + part + "]", name, 0, "V", "no box of cells lies on the recorded ways that join them");
        }
        List<Term> up = terms(boxes, 1);
        List<Term> down = terms(boxes, -1);
        boolean isUp = sum(up) >= sum(down);
        return Working.fill(LEFT)
                .named(name + ", by " + String.join(" and ", boxes.keySet()))
                .each("U_a", isUp ? up : down)
                .each("U_b", isUp ? down : up)
                .work();
    }

    private static double sum(List<Term> terms) {
        return terms.stream().mapToDouble(LiveParts::volts).sum();
    }

    private List<Term> terms(Map<String, Integer> boxes, int way) {
        var terms = new ArrayList<Term>();
        boxes.forEach((box, times) -> IntStream.range(0, times * way).forEach(i -> terms.add(pack.boxVoltage(box))));
        return List.copyOf(terms);
    }

    /** Whether a part keeps more than a voltage whatever was opened, so that no reading there shows a dead car. */
    public boolean staysLive(Part part, Term low) {
        double most = low.amount().map(amount -> amount.si()).orElse(0.0);
        return part.role() == Role.BATTERY || volts(betweenPoles(part)) > most;
    }

    /**
     * Boxes of cells that still hang together, and what hangs on them.
     *
     * @param boxes at least one
     * @param volts the largest voltage between any two terminals that hang on them
     * @param touching parts outside with a terminal that hangs on them
     */
    public record Half(List<Part> boxes, Term volts, List<Part> touching) {}

    /** What the open parts leave of the pack, in the order of the job file. */
    public List<Half> halves() {
        var halves = new ArrayList<Half>();
        var told = new LinkedHashSet<Set<String>>();
        for (Part box : circuit.parts(Role.BATTERY)) {
            Set<String> ids = potentials.boxes(Terminal.plus(box.id()));
            if (!ids.isEmpty() && told.add(ids)) {
                halves.add(new Half(
                        circuit.parts().stream()
                                .filter(part -> ids.contains(part.id()))
                                .toList(),
                        largest(box, ids),
                        circuit.parts().stream()
                                .filter(part -> !ids.contains(part.id()) && !open.contains(part.id()))
                                .filter(part -> circuit.terminals(part.id()).stream()
                                        .anyMatch(end -> potentials.boxes(end).equals(ids)))
                                .toList()));
            }
        }
        return List.copyOf(halves);
    }

    private Term largest(Part first, Set<String> boxes) {
        String name = "largest voltage on " + String.join(" + ", boxes);
        List<Terminal> poles =
                boxes.stream().flatMap(box -> circuit.terminals(box).stream()).toList();
        Terminal from = Terminal.minus(first.id());
        Terminal to = Terminal.plus(first.id());
        for (Terminal a : poles) {
            for (Terminal b : poles) {
                if (potentials.between(a, b).orElse(0)
                        > potentials.between(from, to).orElse(0)) {
                    from = a;
                    to = b;
                }
            }
        }
        return between(name, from, to, null);
    }

    /** Whether a part lies between the poles and outside the boxes of cells. */
    public static boolean isConsumer(Part part) {
        return part.role() != null && part.role() != Role.BATTERY && part.role().ports() == Ports.TWO_POLES;
    }
}
