package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.check.Standing;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Plain;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.source.Citation;

/** Gathers what a set of examinations cites: each document once, with the places in it. */
final class Cited {
    private final Map<String, Set<String>> documents = new LinkedHashMap<>();

    private Cited() {}

    /** One line for each document, in order of first use. */
    static List<String> by(List<Examination> examinations) {
        var cited = new Cited();
        for (Examination examination : examinations) {
            for (Examination.Row row : examination.rows()) {
                row.finding().working().ifPresent(cited::add);
                row.finding().limit().ifPresent(cited::add);
                row.finding().others().forEach(cited::add);
            }
        }
        return cited.lines();
    }

    /** What the figures behind a result cite: formulas, constants, limits used as figures. */
    private void add(Working working) {
        Formula formula = working.formula();
        formula.citations().forEach(citation -> add(citation, ""));
        formula.constants().forEach(constant -> add(constant.citation(), ""));
        for (List<Term> terms : working.inputs().values()) {
            for (Term term : terms) {
                Term bare = term instanceof Plain plain ? plain.of() : term;
                if (bare instanceof Working input) {
                    add(input);
                } else if (bare instanceof Limit limit) {
                    add(limit);
                }
            }
        }
    }

    private void add(Limit limit) {
        boolean isOwn = limit.standing().equals(Standing.OWN_RULE);
        add(limit.citation(), isOwn ? "" : " (" + limit.standing() + ")");
    }

    private void add(Citation citation, String standing) {
        documents
                .computeIfAbsent(citation.document(), key -> new LinkedHashSet<>())
                .add((citation.clause() + standing).strip());
    }

    private List<String> lines() {
        var lines = new ArrayList<String>();
        documents.forEach((document, places) -> {
            String where = String.join(
                    "; ", places.stream().filter(place -> !place.isEmpty()).toList());
            lines.add(where.isEmpty() ? document : document + ": " + where);
        });
        return List.copyOf(lines);
    }
}
