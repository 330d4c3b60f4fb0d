package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Known;
import kerbfolio.job.Job;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.quantity.UnitSystem;

/** The isolation and labelling checklist: part by part and cable by cable, from what the checks found. */
public final class Checklist {
    /** The checks an inspector walks round the car with, and what each looks for in a few words. */
    private static final Map<String, String> ITEMS = items();

    /** A part or cable with everything asked of it. */
    public record Subject(String id, String name, String place, List<Item> items, List<String> photos) {}

    /**
     * One thing asked.
     *
     * @param what in a few words
     * @param clause limit and clause
     * @param shown what the record shows of it
     */
    public record Item(String what, String clause, String shown, Verdict verdict) {}

    private Checklist() {}

    private static Map<String, String> items() {
        var items = new LinkedHashMap<String, String>();
        items.put("touch-protection", "touch protection");
        items.put("warning-symbol", "warning symbol");
        items.put("cable-colour", "orange outer cover");
        items.put("isolation-coverage", "isolation measured with it joined");
        items.put("bonding", "bonding to the chassis");
        items.put("interlock-loop", "interlock");
        return items;
    }

    static List<Subject> of(Job job, List<Examination> examinations, UnitSystem system) {
        var subjects = new ArrayList<Subject>();
        for (Part part : job.parts()) {
            String place = part.enclosure() == null || part.enclosure().place() == null
                    ? ""
                    : part.enclosure().place().toString().replace('-', ' ');
            add(
                    part.id(),
                    part.title(),
                    place,
                    part.connectors().stream().map(c -> c.id()).toList(),
                    job,
                    examinations,
                    system,
                    subjects);
        }
        for (Link link : job.links()) {
            String place = link.place() == null ? "" : link.place().toString().replace('-', ' ');
            add(link.id(), "cable " + link.id(), place, List.of(), job, examinations, system, subjects);
        }
        return List.copyOf(subjects);
    }

    private static void add(
            String id,
            String name,
            String place,
            List<String> connectors,
            Job job,
            List<Examination> examinations,
            UnitSystem system,
            List<Subject> subjects) {
        var items = new ArrayList<Item>();
        ITEMS.forEach((check, what) -> examinations.stream()
                .filter(examination -> examination.check().id().equals(check))
                .flatMap(examination -> examination.rows().stream())
                .filter(row -> isOf(row.finding().subject(), id)
                        || connectors.stream()
                                .anyMatch(connector -> isOf(row.finding().subject(), connector)))
                .forEach(row -> items.add(item(what, id, row, system))));
        if (!items.isEmpty()) {
            List<String> photos = job.photos().stream()
                    .filter(photo -> id.equals(photo.subject()))
                    .map(photo -> photo.file())
                    .toList();
            subjects.add(new Subject(id, name, place, List.copyOf(items), photos));
        }
    }

    /** A finding speaks of what its subject begins with. */
    private static boolean isOf(String subject, String id) {
        return subject.equals(id) || subject.startsWith(id + ",") || subject.startsWith(id + " ");
    }

    private static Item item(String what, String id, Examination.Row row, UnitSystem system) {
        Finding finding = row.finding();
        String rest = finding.subject().equals(id)
                ? ""
                : finding.subject()
                        .substring(finding.subject().startsWith(id) ? id.length() : 0)
                        .replaceFirst("^[, ]+", "");
        return new Item(
                rest.isEmpty() ? what : what + ", " + rest,
                finding.limit()
                        .map(limit -> limit.bound() + " " + Shown.of(limit, system) + ", " + clause(limit))
                        .orElse("\u2014"),
                shown(finding, system),
                row.verdict());
    }

    private static String clause(Limit limit) {
        return limit.citation().toString();
    }

    private static String shown(Finding finding, UnitSystem system) {
        if (finding.result().amount().isEmpty()) {
            return finding.lack();
        }
        String figure = Shown.of(finding, system).large();
        return finding.result() instanceof Known known ? known.origin() : figure;
    }
}
