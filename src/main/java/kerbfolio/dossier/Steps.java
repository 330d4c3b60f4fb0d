package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.WorkingsPart.Step;
import kerbfolio.formula.Known;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Share;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.UnitSystem;

/** Writes workings out in full, each one once: where several questions lean on it, it gets a number and is cited. */
final class Steps {
    private final UnitSystem system;
    private final Map<Working, String> numbers = new LinkedHashMap<>();

    Steps(List<Examination> examinations, UnitSystem system) {
        this.system = system;
        var seen = new LinkedHashSet<Working>();
        var shared = new LinkedHashSet<Working>();
        for (Examination examination : examinations) {
            var used = new LinkedHashSet<Working>();
            printed(examination).forEach(row -> row.finding().working().ifPresent(working -> collect(working, used)));
            for (Working working : used) {
                if (!seen.add(working)) {
                    shared.add(working);
                }
            }
        }
        for (Working working : seen) {
            if (shared.contains(working)) {
                numbers.put(working, "S" + (numbers.size() + 1));
            }
        }
    }

    /** What several questions lean on, in the order it is needed. */
    List<Step> shared() {
        return numbers.keySet().stream()
                .map(working -> step(working.name(), working, false))
                .toList();
    }

    /** The row that is worst off and every row not met, each after what only this question leans on. */
    List<Step> of(Examination examination) {
        var steps = new LinkedHashMap<Working, Step>();
        for (Examination.Row row : printed(examination)) {
            row.finding().working().ifPresent(working -> {
                var used = new LinkedHashSet<Working>();
                collect(working, used);
                used.stream()
                        .filter(input -> !numbers.containsKey(input))
                        .forEach(input -> steps.putIfAbsent(input, step(input.name(), input, false)));
                steps.put(working, step(row.finding().subject(), working, true));
            });
        }
        return List.copyOf(steps.values());
    }

    private static List<Examination.Row> printed(Examination examination) {
        List<Examination.Row> known = examination.rows().stream()
                .filter(row -> row.finding().result().amount().isPresent())
                .toList();
        var worst = known.stream().min(Comparator.comparingDouble(Steps::headroom));
        return known.stream()
                .filter(row -> row.verdict() == Verdict.NOT_MET
                        || worst.filter(row::equals).isPresent())
                .toList();
    }

    /** What is left to the limit after the expanded uncertainty; without a limit the first row is shown. */
    private static double headroom(Examination.Row row) {
        Amount amount = row.finding().result().amount().orElseThrow();
        return row.finding()
                .limit()
                .map(limit -> (limit.bound().isCeiling() ? -1 : 1)
                                * (amount.si() - limit.value().si())
                        - amount.expanded())
                .orElse(0.0);
    }

    /** The workings a working leans on, innermost first. */
    private static void collect(Working working, Set<Working> used) {
        inputs(working)
                .filter(Working.class::isInstance)
                .map(Working.class::cast)
                .forEach(input -> {
                    if (!used.contains(input)) {
                        collect(input, used);
                        used.add(input);
                    }
                });
    }

    private static Stream<Term> inputs(Working working) {
        return working.inputs().values().stream()
                .flatMap(List::stream)
                .map(term -> term instanceof Plain plain ? plain.of() : term);
    }

    private Step step(String name, Working working, boolean isRow) {
        return new Step(
                numbers.getOrDefault(working, ""),
                name,
                working.formula().printed(),
                working.substituted(system),
                Shown.of(working, system),
                doubt(working),
                sources(working),
                isRow);
    }

    private static String doubt(Working working) {
        List<Share> budget = working.budget();
        if (budget.isEmpty()) {
            return "";
        }
        Share first = budget.get(0);
        return "largest share of the uncertainty: " + first.cause() + ", " + Math.round(first.part() * 100) + " %";
    }

    private List<String> sources(Working working) {
        var sources = new ArrayList<String>();
        inputs(working).forEach(term -> {
            String figure = term.name() + " " + Shown.of(term, system);
            if (term instanceof Known || term instanceof Limit) {
                sources.add(figure + ", " + (term instanceof Known ? term.basis() + ", " : "") + term.origin());
            } else if (numbers.containsKey(term)) {
                sources.add(figure + ", " + numbers.get(term));
            }
        });
        return List.copyOf(sources);
    }
}
