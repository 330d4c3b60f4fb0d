package kerbfolio.car;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Link;
import kerbfolio.job.Role;
import kerbfolio.source.Source;

/**
 * What a short circuit draws: all cells full, and no more resistance in its way than is sure to be there. What is left
 * out makes the current larger, so it never flatters a fuse.
 */
final class ProspectiveCurrent {
    static final Formula CURRENT = Formula.of("I_p = U_max/(R_p + sum(R_s))")
            .giving("prospective short-circuit current", "kA")
            .with("U_max", "highest working voltage", "V")
            .with("R_p", "resistance of the pack", "mΩ")
            .each("R_s", "least resistance of each cable between boxes", "mΩ")
            .needs("R_p > 0*[mΩ]")
            .from(Source.CIRCUITS.clause("Ohm's law"))
            .build();

    private ProspectiveCurrent() {}

    static Working of(TractionPack pack, Circuit circuit, Function<Link, Conductor> conductor) {
        boolean isOneString =
                pack.plate().strings().amount().map(amount -> amount.si() == 1).orElse(false);
        List<Term> cables = circuit.links().stream()
                .filter(link -> isOneString && isBetweenBoxes(circuit, link))
                .<Term>map(link -> conductor.apply(link).leastResistance())
                .filter(term -> term.amount().isPresent())
                .toList();
        return Working.fill(CURRENT)
                .put("U_max", pack.highestVoltage())
                .put("R_p", pack.resistance())
                .each("R_s", cables.isEmpty() ? List.of(noCable()) : cables)
                .work();
    }

    private static Term noCable() {
        return Evidence.solved("links", "cables between boxes", 0, "mΩ", "none is known that every fault passes");
    }

    /** Whether the cable alone joins a pole of one box to a pole of another. */
    private static boolean isBetweenBoxes(Circuit circuit, Link link) {
        List<Bond> bonds = circuit.bonds(link.id());
        if (bonds.size() != 1) {
            return false;
        }
        Bond cable = bonds.get(0);
        Set<Terminal> here = circuit.net(cable.from(), Set.of(link.id()));
        Set<Terminal> there = circuit.net(cable.to(), Set.of(link.id()));
        return here.stream().noneMatch(there::contains) && hasBox(circuit, here) && hasBox(circuit, there);
    }

    private static boolean hasBox(Circuit circuit, Set<Terminal> net) {
        var parts = new HashSet<String>();
        net.forEach(terminal -> parts.add(terminal.part()));
        return circuit.parts(Role.BATTERY).stream().anyMatch(box -> parts.contains(box.id()));
    }
}
