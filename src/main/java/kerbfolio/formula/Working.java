package kerbfolio.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * A formula filled with terms. It is itself a term, so a chain of workings stays live in print, in its causes of doubt
 * and in the workbook.
 */
public final class Working implements Term {
    private final Formula formula;
    private final String name;
    private final Map<String, List<Term>> inputs;
    private final List<Absent> missing;
    private final @Nullable Amount amount;
    private final @Nullable String refusal;
    private final boolean flips;

    private Working(Formula formula, String name, Map<String, List<Term>> inputs) {
        this.formula = formula;
        this.name = name;
        this.inputs = inputs;
        this.missing = inputs.values().stream()
                .flatMap(List::stream)
                .flatMap(term -> term.missing().stream())
                .distinct()
                .toList();
        boolean complete = inputs.values().stream()
                .flatMap(List::stream)
                .allMatch(term -> term.amount().isPresent());
        Doubt doubt = complete ? Doubt.of(formula, inputs) : Doubt.refused(reason(inputs));
        this.amount = doubt.amount();
        this.refusal = doubt.refusal();
        this.flips =
                doubt.flips() || inputs.values().stream().flatMap(List::stream).anyMatch(Working::flips);
    }

    /** Begins to fill a formula. */
    public static Filling fill(Formula formula) {
        return new Filling(formula);
    }

    public Formula formula() {
        return formula;
    }

    /** Symbol to the terms that fill it, in the order they were declared; one term unless the symbol is a list. */
    public Map<String, List<Term>> inputs() {
        return inputs;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Unit unit() {
        return formula.result().unit();
    }

    @Override
    public Optional<Amount> amount() {
        return Optional.ofNullable(amount);
    }

    @Override
    public Basis basis() {
        return amount == null ? Basis.ABSENT : Basis.COMPUTED;
    }

    @Override
    public String origin() {
        return refusal == null ? formula.result().meaning() : refusal;
    }

    private static boolean flips(Term term) {
        return term instanceof Plain plain ? flips(plain.of()) : term instanceof Working working && working.flips;
    }

    /** A small move of an input, or of an input's input, changes the law itself, so no verdict is decided. */
    public boolean flips() {
        return flips;
    }

    @Override
    public List<String> reservations() {
        Set<String> all = new LinkedHashSet<>();
        inputs.values().forEach(terms -> terms.forEach(term -> all.addAll(term.reservations())));
        return List.copyOf(all);
    }

    @Override
    public List<Absent> missing() {
        return missing;
    }

    /** What moves the result, largest first. */
    public List<Share> budget() {
        if (amount == null) {
            return List.of();
        }
        double variance = Math.pow(amount.standardUncertainty(), 2);
        return amount.effects().entrySet().stream()
                .filter(effect -> effect.getValue() != 0)
                .map(effect ->
                        new Share(effect.getKey(), effect.getValue(), effect.getValue() * effect.getValue() / variance))
                .sorted(Comparator.comparingDouble(Share::part).reversed().thenComparing(Share::cause))
                .toList();
    }

    /** The expanded uncertainty as a term: found by moving every cause, not by one formula a cell could hold. */
    public Term doubt() {
        if (amount == null) {
            return this;
        }
        double expanded = amount.expanded();
        return new Known(
                "",
                "expanded uncertainty of " + name,
                Quantity.of(unit().differenceFromSi(expanded), unit()),
                Amount.exact(expanded),
                Basis.SOLVED,
                "from the causes of doubt, figure at issue",
                reservations());
    }

    /** The formula with values and units in place of symbols, in the given unit system. */
    public Piece substituted(UnitSystem system) {
        return Typeset.substituted(this, system);
    }

    /** The one term that fills a symbol that is no list. */
    Term term(String symbol) {
        List<Term> terms = inputs.get(symbol);
        if (terms == null) {
            throw new FormulaFault(formula.text(), "no symbol `" + symbol + "`");
        }
        return terms.get(0);
    }

    /** The sum over a list expression, SI. */
    double summed(Node list) {
        return Op.SUM.of(list.read(new Arithmetic(Doubt.values(formula, inputs))));
    }

    private static String reason(Map<String, List<Term>> inputs) {
        return inputs.values().stream()
                .flatMap(List::stream)
                .filter(term -> term.amount().isEmpty())
                .map(term -> term.name() + ": " + term.origin())
                .distinct()
                .reduce((a, b) -> a + "; " + b)
                .orElse("");
    }

    /** Puts a term to each symbol; refuses an unknown symbol at once and a missing one at the end. */
    public static final class Filling {
        private final Formula formula;
        private final Map<String, List<Term>> given = new LinkedHashMap<>();
        private String name;

        private Filling(Formula formula) {
            this.formula = formula;
            this.name = formula.result().meaning();
        }

        /** What this result is called, where the formula's own words are too general. */
        public Filling named(String words) {
            name = words;
            return this;
        }

        public Filling put(String symbol, Term term) {
            return put(symbol, List.of(term), false);
        }

        /** Fills a list symbol. */
        public Filling each(String symbol, List<? extends Term> terms) {
            return put(symbol, List.copyOf(terms), true);
        }

        private Filling put(String symbol, List<Term> terms, boolean each) {
            Declared declared = formula.declared(symbol);
            if (declared.each() != each) {
                throw new FormulaFault(formula.text(), "`" + symbol + "` is " + (each ? "not a list" : "a list"));
            }
            for (Term term : terms) {
                if (!term.unit().measuresLike(declared.unit())) {
                    throw new FormulaFault(
                            formula.text(),
                            "`" + symbol + "` [" + declared.unit() + "] filled with " + term.name() + " [" + term.unit()
                                    + "]");
                }
            }
            given.put(symbol, terms);
            return this;
        }

        public Working work() {
            var inputs = new LinkedHashMap<String, List<Term>>();
            for (Declared declared : formula.symbols()) {
                List<Term> terms = given.get(declared.symbol());
                if (terms == null) {
                    throw new FormulaFault(formula.text(), "`" + declared.symbol() + "` is not filled");
                }
                inputs.put(declared.symbol(), new ArrayList<>(terms));
            }
            inputs.replaceAll((symbol, terms) -> List.copyOf(terms));
            return new Working(formula, name, Collections.unmodifiableMap(inputs));
        }
    }
}
