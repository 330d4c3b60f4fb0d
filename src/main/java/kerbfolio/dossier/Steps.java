package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.WorkingsPart.Step;
import kerbfolio.formula.Declared;
import kerbfolio.formula.Known;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Share;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.UnitSystem;

/** Writes workings out in full, each one once: where several questions lean on it, it gets a number and is cited. */
final class Steps {
    private static final int LONG_LIST = 4;
    private static final int MOST_NOT_MET = 3;

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
        return numbers.keySet().stream().map(this::step).toList();
    }

    /** The row that is worst off and the rows not met, each after what only this question leans on. */
    List<Step> of(Examination examination) {
        var steps = new LinkedHashMap<Working, Step>();
        for (Examination.Row row : printed(examination)) {
            row.finding().working().ifPresent(working -> {
                var used = new LinkedHashSet<Working>();
                collect(working, used);
                used.stream()
                        .filter(input -> !numbers.containsKey(input))
                        .forEach(input -> steps.putIfAbsent(input, step(input)));
                steps.put(working, step(row.finding().subject(), working, Shown.of(row.finding(), system), true));
            });
        }
        return List.copyOf(steps.values());
    }

    /** How many rows not met are not worked in full, because others by the same formula are worse. */
    static int unworked(Examination examination) {
        return (int) worked(examination)
                .filter(row -> !printed(examination).contains(row))
                .count();
    }

    private static Stream<Examination.Row> worked(Examination examination) {
        return examination.rows().stream()
                .filter(row -> row.verdict() == Verdict.NOT_MET)
                .filter(row -> row.finding().working().isPresent());
    }

    private static List<Examination.Row> printed(Examination examination) {
        List<Examination.Row> known = examination.rows().stream()
                .filter(row -> row.finding().result().amount().isPresent())
                .toList();
        var printed = new HashSet<Examination.Row>();
        known.stream()
                .reduce((a, b) -> headroom(b) <= headroom(a) ? b : a)
                .filter(row -> worked(examination).noneMatch(row::equals))
                .ifPresent(printed::add);
        worked(examination)
                .collect(Collectors.groupingBy(
                        row -> row.finding().working().orElseThrow().formula()))
                .values()
                .forEach(rows -> rows.stream()
                        .sorted(Comparator.comparingDouble(Steps::headroom))
                        .limit(MOST_NOT_MET)
                        .forEach(printed::add));
        return known.stream().filter(printed::contains).toList();
    }

    /** What is left to the limit after the expanded uncertainty; without a limit the last row is shown, the car as it leaves. */
    private static double headroom(Examination.Row row) {
        Amount amount = row.finding().result().amount().orElseThrow();
        return row.finding()
                .limit()
                .map(limit -> (limit.bound().isCeiling() ? -1 : 1)
                                * (amount.si() - limit.value().si())
                        - amount.expanded())
                .orElse(0.0);
    }

    /** A figure turned over, such as a conductance: it is said beside the figure that leans on it. */
    private static boolean isTurn(Working working) {
        List<Declared> symbols = working.formula().symbols();
        return symbols.size() == 1 && !symbols.get(0).each() && inputs(working).allMatch(Known.class::isInstance);
    }

    /** The workings a working leans on, innermost first. */
    private static void collect(Working working, Set<Working> used) {
        inputs(working)
                .filter(Working.class::isInstance)
                .map(Working.class::cast)
                .filter(input -> !isTurn(input))
                .forEach(input -> {
                    if (!used.contains(input)) {
                        collect(input, used);
                        used.add(input);
                    }
                });
    }

    private static Stream<Term> inputs(Working working) {
        return working.inputs().values().stream().flatMap(List::stream).map(Steps::unwrapped);
    }

    private Step step(Working working) {
        return step(working.name(), working, Shown.of(working, system), false);
    }

    private Step step(String name, Working working, Shown result, boolean isRow) {
        return new Step(
                numbers.getOrDefault(working, ""),
                name,
                working.formula().printed(),
                working.substituted(system),
                result,
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
        return "largest share of the uncertainty: " + words(first.cause(), working) + ", "
                + Math.round(first.part() * 100) + "\u00a0%";
    }

    /** A cause by the name of the figure it stands for; an instrument's by its own. */
    private static String words(String cause, Working working) {
        if (cause.startsWith("instruments[")) {
            return "error of " + cause.substring(12, cause.indexOf(']')) + " in proportion to its readings";
        }
        return leaves(working)
                .filter(known -> known.path().equals(cause))
                .map(Known::name)
                .findFirst()
                .orElse(cause);
    }

    private static Stream<Known> leaves(Term term) {
        Term bare = unwrapped(term);
        if (bare instanceof Working working) {
            return working.inputs().values().stream().flatMap(List::stream).flatMap(Steps::leaves);
        }
        return bare instanceof Known known ? Stream.of(known) : Stream.empty();
    }

    /** Where each figure is from; a long list of figures read stands in a table of its own and is only counted here. */
    private List<String> sources(Working working) {
        var sources = new ArrayList<String>();
        for (Declared symbol : working.formula().symbols()) {
            List<Term> terms = working.inputs().getOrDefault(symbol.symbol(), List.of());
            boolean isRead = terms.stream().map(Steps::unwrapped).noneMatch(Working.class::isInstance);
            if (symbol.each() && terms.size() > LONG_LIST && isRead) {
                sources.add(symbol.meaning() + ": " + terms.size() + " entries of the record");
            } else {
                terms.stream()
                        .map(Steps::unwrapped)
                        .forEach(term -> source(term).ifPresent(sources::add));
            }
        }
        return List.copyOf(sources);
    }

    private Optional<String> source(Term term) {
        String figure = term.name() + " " + Shown.of(term, system);
        if (term instanceof Known) {
            return Optional.of(figure + ", " + term.basis() + ", " + term.origin());
        }
        if (term instanceof Limit) {
            return Optional.of(figure + ", " + term.origin());
        }
        if (!(term instanceof Working working)) {
            return Optional.empty();
        }
        if (isTurn(working)) {
            return inputs(working)
                    .findFirst()
                    .flatMap(this::source)
                    .map(of -> figure + ", " + working.formula().text() + ", " + of);
        }
        return Optional.ofNullable(numbers.get(working)).map(number -> figure + ", " + number);
    }

    private static Term unwrapped(Term term) {
        return term instanceof Plain plain ? plain.of() : term;
    }
}
