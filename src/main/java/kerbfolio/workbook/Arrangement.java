package kerbfolio.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerbfolio.car.Ledger;
import kerbfolio.check.Examination;
import kerbfolio.dossier.Dossier;
import kerbfolio.formula.Declared;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;

/**
 * What stands on which sheet: every leaf figure once in the register of readings, and per trade the blocks in the order
 * in which one leans on the other.
 */
final class Arrangement {
    private final Figures figures = new Figures();
    private final Map<Integer, Term> leaves = new LinkedHashMap<>();
    private final Map<String, List<Block>> blocks = new LinkedHashMap<>();
    private final Set<Integer> examined = new HashSet<>();
    private final Set<Integer> placed = new HashSet<>();
    private final Map<Object, ListBlock> lists = new HashMap<>();

    Arrangement(Dossier dossier) {
        dossier.examinations()
                .forEach(examination -> examination.rows().forEach(row -> examined.add(figures.of(result(row)))));
        dossier.examinations().forEach(this::arrange);
        Ledger ledger = dossier.car().ledger();
        ledger.fitted().forEach(this::enter);
        ledger.removed().forEach(this::enter);
    }

    Figures figures() {
        return figures;
    }

    /** Every leaf figure, in order of first use. */
    List<Term> leaves() {
        return List.copyOf(leaves.values());
    }

    List<TradeSheet> sheets() {
        return blocks.entrySet().stream()
                .map(entry -> new TradeSheet(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Term result(Examination.Row row) {
        return Figures.bare(row.finding().result());
    }

    private void arrange(Examination examination) {
        List<Block> sheet = blocks.computeIfAbsent(examination.check().sheet(), sheetName -> new ArrayList<>());
        var supports = new LinkedHashMap<Formula, List<FormulaBlock.Line>>();
        var rows = new LinkedHashMap<Optional<Formula>, List<FormulaBlock.Line>>();
        for (Examination.Row row : examination.rows()) {
            Term result = result(row);
            if (result instanceof Working working) {
                lean(working, supports, sheet);
            } else {
                enter(result);
            }
            row.finding().limit().ifPresent(this::enter);
            Optional<Formula> formula = row.finding().working().map(Working::formula);
            rows.computeIfAbsent(formula, key -> new ArrayList<>())
                    .add(new FormulaBlock.Line(row.finding().subject(), result, Optional.of(row)));
        }
        supports.forEach((formula, lines) -> sheet.add(new FormulaBlock(
                "For what follows: " + formula.result().meaning(),
                String.join("; ", sources(formula)),
                Optional.of(formula),
                lines)));
        rows.forEach((formula, lines) -> sheet.add(
                new FormulaBlock(examination.check().question(), note(examination, formula), formula, lines)));
    }

    private static String note(Examination examination, Optional<Formula> formula) {
        var words = new ArrayList<String>();
        words.add(examination.check().id());
        formula.ifPresent(f -> words.addAll(sources(f)));
        return String.join("; ", words);
    }

    private static List<String> sources(Formula formula) {
        return formula.citations().stream().map(Object::toString).toList();
    }

    /** Places what a working leans on before it, down to the leaves. */
    private void lean(Working working, Map<Formula, List<FormulaBlock.Line>> supports, List<Block> sheet) {
        for (Declared declared : working.formula().symbols()) {
            List<Term> terms = working.inputs().getOrDefault(declared.symbol(), List.of());
            for (Term term : terms) {
                Term bare = Figures.bare(term);
                if (!(bare instanceof Working input)) {
                    enter(bare);
                } else if (!examined.contains(figures.of(input)) && placed.add(figures.of(input))) {
                    lean(input, supports, sheet);
                    supports.computeIfAbsent(input.formula(), key -> new ArrayList<>())
                            .add(new FormulaBlock.Line(input.name(), input, Optional.empty()));
                }
            }
            if (declared.each()) {
                list(declared, terms, sheet);
            }
        }
    }

    /** Lists over the same parts or loads stand side by side. */
    private void list(Declared declared, List<Term> terms, List<Block> sheet) {
        List<Integer> numbers = figures.of(terms);
        Object key = ListBlock.things(terms).<Object>map(things -> things).orElse(numbers);
        lists.computeIfAbsent(key, fresh -> {
                    var block = new ListBlock(terms.size());
                    sheet.add(block);
                    return block;
                })
                .add(numbers, declared, terms);
    }

    private void enter(Ledger.Line line) {
        List.of(line.mass(), line.x()).forEach(term -> {
            if (term instanceof Known) {
                enter(term);
            }
        });
    }

    private void enter(Term leaf) {
        leaves.putIfAbsent(figures.of(leaf), leaf);
    }
}
