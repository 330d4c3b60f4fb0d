package kerbfolio.formula;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/**
 * Several figures nobody can give yet, as one: a reader asks once for all of them.
 *
 * @param name what they are together, in shop words
 * @param terms at least one, none of them known
 */
public record Unknown(String name, List<Term> terms) implements Term {
    public Unknown {
        terms = List.copyOf(terms);
    }

    @Override
    public Unit unit() {
        return terms.get(0).unit();
    }

    @Override
    public Basis basis() {
        return Basis.ABSENT;
    }

    @Override
    public String origin() {
        return terms.stream().map(Term::origin).distinct().collect(Collectors.joining("; "));
    }

    @Override
    public List<String> reservations() {
        return List.of();
    }

    @Override
    public Optional<Amount> amount() {
        return Optional.empty();
    }

    /** Nothing, if one cannot be used for another reason than that nobody wrote it: that reason goes before. */
    @Override
    public List<Absent> missing() {
        boolean onlyMissing = terms.stream().noneMatch(term -> term.missing().isEmpty());
        return onlyMissing
                ? terms.stream()
                        .flatMap(term -> term.missing().stream())
                        .distinct()
                        .toList()
                : List.of();
    }
}
