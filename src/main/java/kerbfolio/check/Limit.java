package kerbfolio.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Citation;

/**
 * A figure a regulation or a rule sets, with its clause. It judges a term, and it can itself stand for a symbol.
 *
 * @param set requirement set it stands in
 * @param key its key there
 * @param meaning in words
 * @param bound on which side it allows
 * @param value the figure
 * @param citation document and clause
 * @param standing who vouches for the figure
 */
public record Limit(
        String set, String key, String meaning, Bound bound, Quantity value, Citation citation, Standing standing)
        implements Term {
    /** Figures closer than this, relatively, are the same: binary arithmetic leaves dust at exact limits. */
    private static final double DUST = 1e-12;

    /** What can be said of a figure against this limit: decided only if its whole expanded uncertainty lies on one side. */
    public Verdict judge(Term term) {
        if (term.amount().isEmpty()) {
            return Verdict.NO_EVIDENCE;
        }
        if (term instanceof Working working && working.flips()) {
            return Verdict.UNDECIDED;
        }
        Amount amount = term.amount().get();
        double dust = DUST * Math.max(Math.abs(value.si()), size(term));
        Verdict verdict = bound.judge(amount.si(), amount.expanded(), value.si(), dust);
        return verdict == Verdict.MET && isWeak(term) ? Verdict.MET_UNCONFIRMED : verdict;
    }

    /** Why a figure met against this limit would not clear a gate; empty if it would. */
    public List<String> reservations(Term term) {
        return Stream.concat(term.reservations().stream(), reservations().stream())
                .distinct()
                .toList();
    }

    /** The largest figure of its kind a term is made of: a small difference of two large ones carries their dust. */
    private static double size(Term term) {
        double size = term.amount().map(amount -> Math.abs(amount.si())).orElse(0.0);
        if (term instanceof Working working) {
            for (List<Term> inputs : working.inputs().values()) {
                for (Term input : inputs) {
                    size = input.unit().measuresLike(term.unit()) ? Math.max(size, size(input)) : size;
                }
            }
        }
        return size;
    }

    private boolean isWeak(Term term) {
        return !reservations(term).isEmpty();
    }

    @Override
    public String name() {
        return meaning;
    }

    @Override
    public Unit unit() {
        return value.unit();
    }

    @Override
    public Optional<Amount> amount() {
        return Optional.of(Amount.exact(value.si()));
    }

    @Override
    public Basis basis() {
        return Basis.REQUIRED;
    }

    @Override
    public String origin() {
        return citation + " (" + standing + ")";
    }

    @Override
    public List<String> reservations() {
        return standing.isConfirmed()
                ? List.of()
                : List.of("limit not confirmed: " + meaning + " (" + set + ", " + citation.clause() + ")");
    }

    @Override
    public List<Absent> missing() {
        return List.of();
    }
}
