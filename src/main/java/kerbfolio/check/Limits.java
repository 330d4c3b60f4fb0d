package kerbfolio.check;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Evidence;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Confirmation;
import kerbfolio.job.Gate;
import kerbfolio.job.Job;
import kerbfolio.job.Tier;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Citation;
import kerbfolio.source.Table;
import org.jspecify.annotations.Nullable;

/**
 * The limits in force for a job: the home set's, then the rules of this program; and, apart from them, the sets printed
 * for comparison. Figures the shop confirmed by name are marked so.
 */
public final class Limits {
    private final RequirementSet home;
    private final RequirementSet house;
    private final List<RequirementSet> compared;
    private final List<Confirmation> confirmations;
    private final Tier tier;

    public Limits(RequirementSet home, RequirementSet house, List<RequirementSet> compared, Job job) {
        this.home = home;
        this.house = house;
        this.compared = List.copyOf(compared);
        this.confirmations = job.confirmations();
        this.tier = job.job().tier();
    }

    public RequirementSet home() {
        return home;
    }

    public List<RequirementSet> compared() {
        return compared;
    }

    /** Whether a set in force, or a published table, goes by that name and has that key. */
    boolean has(String set, String key) {
        if (set.equals(Evidence.TABLES)) {
            return Table.isThere(key);
        }
        return Stream.concat(Stream.of(home, house), compared.stream())
                .filter(candidate -> candidate.set().equals(set))
                .anyMatch(candidate -> find(candidate, key).isPresent());
    }

    /** The limit of a key; empty if the home set asks nothing of the kind. */
    public Optional<Limit> find(String key) {
        return find(home, key).or(() -> find(house, key));
    }

    /** The limit as a term, for a formula that needs its figure. */
    public Term term(String key, String unit) {
        return find(key)
                .<Term>map(limit -> limit)
                .orElseGet(() -> new Absent(
                        "requirement set " + home.set(), key, Unit.of(unit), "the home set gives no such figure"));
    }

    /** What the sets printed for comparison ask under the same key. */
    public List<Limit> others(String key) {
        return compared.stream().flatMap(set -> find(set, key).stream()).toList();
    }

    /** Checks or whole trades whose findings a gate requires at the job's tier, in the order of the set. */
    public Set<String> evidence(Gate gate) {
        var required = new LinkedHashSet<String>();
        for (RequirementSet set : List.of(home, house)) {
            var evidence = set.evidence() == null ? null : set.evidence().get(RequirementSet.key(gate));
            if (evidence != null) {
                add(required, evidence.first());
                add(required, tier == Tier.FIRST ? null : evidence.inspection());
                add(required, tier == Tier.FULL ? evidence.full() : null);
            }
        }
        return required;
    }

    private static void add(Set<String> required, @Nullable List<String> more) {
        if (more != null) {
            required.addAll(more);
        }
    }

    private Optional<Limit> find(RequirementSet set, String key) {
        RequirementSet.Entry entry = set.limits() == null ? null : set.limits().get(key);
        if (entry == null) {
            return Optional.empty();
        }
        return Optional.of(new Limit(
                set.set(),
                key,
                entry.meaning(),
                entry.bound(),
                entry.value(),
                citation(set, entry),
                standing(set, key, entry)));
    }

    private static Citation citation(RequirementSet set, RequirementSet.Entry entry) {
        Map<String, RequirementSet.Paper> documents = set.documents() == null ? Map.of() : set.documents();
        RequirementSet.Paper paper = documents.get(entry.document());
        String title = paper == null ? entry.document() : paper.title();
        String edition = paper == null || paper.edition() == null ? "" : ", " + paper.edition();
        return new Citation(title + edition, entry.clause() == null ? "" : entry.clause());
    }

    private Standing standing(RequirementSet set, String key, RequirementSet.Entry entry) {
        // Only this program's own rules stand without a document; a shop's file cannot vouch for itself.
        if (set.set().equals(house.set()) && Boolean.TRUE.equals(entry.ownRule())) {
            return Standing.OWN_RULE;
        }
        RequirementSet.Read read = entry.confirmed();
        if (read != null) {
            return Standing.confirmed(
                    new Confirmation(set.set(), List.of(key), read.edition(), read.by(), read.date()));
        }
        return confirmations.stream()
                .filter(confirmation -> confirmation.set().equals(set.set())
                        && confirmation.limits().contains(key))
                .findFirst()
                .map(Standing::confirmed)
                .orElse(Standing.UNCONFIRMED);
    }
}
