package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Known;
import kerbfolio.job.Connector;
import kerbfolio.job.Enclosure;
import kerbfolio.job.IpCode;
import kerbfolio.job.Job;
import kerbfolio.job.Link;
import kerbfolio.job.Part;
import kerbfolio.job.Place;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The isolation and labelling checklist: part by part and cable by cable, from what the checks found.
 *
 * @param asked what is asked, by which clause
 * @param parts parts, with everything asked of each
 * @param cables cables, with everything asked of each
 */
public record Checklist(List<Asked> asked, List<Subject> parts, List<Subject> cables) {
    private static final String TOUCH = "touch-protection";
    private static final String CLOSED = ", closed";

    /** The checks an inspector walks round the car with, and what each looks for in a few words. */
    private static final Map<String, String> ITEMS = items();

    /** What is asked, once for all: of what, the limits in words, and their clauses. */
    public record Asked(String check, String what, List<String> limits, Set<String> clauses) {}

    /**
     * A part or cable with everything asked of it.
     *
     * @param protection degree of protection asked for at its place; empty where none is
     */
    public record Subject(
            String id,
            String name,
            String place,
            String protection,
            String colour,
            List<Item> items,
            List<String> photos) {}

    /**
     * One thing asked.
     *
     * @param check the question it belongs to
     * @param of which side of the part it is asked of; empty for the whole
     * @param clause limit and clause
     * @param shown what the record shows of it
     */
    public record Item(String check, String what, String of, String clause, String shown, Verdict verdict) {}

    private static Map<String, String> items() {
        var items = new LinkedHashMap<String, String>();
        items.put(TOUCH, "touch protection");
        items.put("warning-symbol", "warning symbol");
        items.put("isolation-coverage", "isolation measured with it joined");
        items.put("bonding", "bonding to the chassis");
        items.put("interlock-loop", "interlock");
        items.put("cable-colour", "orange outer cover");
        return items;
    }

    static Checklist of(Job job, List<Examination> examinations, UnitSystem system) {
        List<Examination> asking = ITEMS.keySet().stream()
                .flatMap(check -> examinations.stream()
                        .filter(examination -> examination.check().id().equals(check)))
                .toList();
        var walk = new Walk(job, asking, system);
        return new Checklist(
                asking.stream().map(examination -> asked(examination, system)).toList(),
                job.parts().stream().flatMap(walk::part).toList(),
                job.links().stream().flatMap(walk::cable).toList());
    }

    /** Parts, then cables. */
    public List<Subject> subjects() {
        return Stream.concat(parts.stream(), cables.stream()).toList();
    }

    private static Asked asked(Examination examination, UnitSystem system) {
        String check = examination.check().id();
        var limits = new LinkedHashSet<String>();
        var clauses = new LinkedHashSet<String>();
        examination.rows().stream()
                .flatMap(row -> row.finding().limit().stream())
                .forEach(limit -> {
                    limits.add(limit.meaning() + ": " + words(limit, system));
                    clauses.add(limit.citation().toString());
                });
        return new Asked(check, what(check), List.copyOf(limits), clauses);
    }

    private static String what(String check) {
        return ITEMS.getOrDefault(check, check);
    }

    private static String words(Limit limit, UnitSystem system) {
        return limit.bound() + " " + Shown.of(limit, system);
    }

    private static String words(@Nullable Place place) {
        return place == null ? "" : place.toString().replace('-', ' ');
    }

    /** Goes from part to part and from cable to cable. */
    private record Walk(Job job, List<Examination> asking, UnitSystem system) {
        Stream<Subject> part(Part part) {
            Enclosure enclosure = part.enclosure();
            Map<String, String> codes = new LinkedHashMap<>();
            if (enclosure != null && enclosure.protection() != null) {
                codes.put(part.id() + CLOSED, enclosure.protection());
            }
            for (Connector connector : part.connectors()) {
                codes.put(connector.id() + ", joined", Head.or(connector.mated()));
            }
            List<String> ids = Stream.concat(
                            Stream.of(part.id()), part.connectors().stream().map(Connector::id))
                    .toList();
            return subject(ids, part.title(), words(enclosure == null ? null : enclosure.place()), "", codes);
        }

        Stream<Subject> cable(Link link) {
            return subject(
                    List.of(link.id()), "cable " + link.id(), words(link.place()), Head.or(link.colour()), Map.of());
        }

        private Stream<Subject> subject(
                List<String> ids, String name, String place, String colour, Map<String, String> codes) {
            var items = new ArrayList<Item>();
            for (Examination examination : asking) {
                for (Examination.Row row : examination.rows()) {
                    String subject = row.finding().subject();
                    ids.stream()
                            .filter(id -> isOf(subject, id))
                            .findFirst()
                            .ifPresent(id -> items.add(item(examination.check().id(), ids.get(0), row, codes)));
                }
            }
            List<String> photos = job.photos().stream()
                    .filter(photo -> ids.get(0).equals(photo.subject()))
                    .map(photo -> photo.file())
                    .toList();
            return items.isEmpty()
                    ? Stream.empty()
                    : Stream.of(new Subject(
                            ids.get(0), name, place, protection(ids.get(0)), colour, List.copyOf(items), photos));
        }

        /** What the closed case is judged by. */
        private String protection(String id) {
            return asking.stream()
                    .filter(examination -> examination.check().id().equals(TOUCH))
                    .flatMap(examination -> examination.rows().stream())
                    .filter(row -> row.finding().subject().equals(id + CLOSED))
                    .flatMap(row -> row.finding().limit().stream())
                    .map(limit -> IpCode.marked((int) limit.value().si()))
                    .findFirst()
                    .orElse("");
        }

        /** A finding speaks of what its subject begins with. */
        private static boolean isOf(String subject, String id) {
            return subject.equals(id) || subject.startsWith(id + ",") || subject.startsWith(id + " ");
        }

        private Item item(String check, String id, Examination.Row row, Map<String, String> codes) {
            Finding finding = row.finding();
            String of = finding.subject().startsWith(id)
                    ? finding.subject().substring(id.length()).replaceFirst("^[-, ]+", "")
                    : finding.subject();
            String code = codes.containsKey(finding.subject()) ? codes.get(finding.subject()) + ", " : "";
            return new Item(
                    check,
                    what(check),
                    of,
                    finding.limit()
                            .map(limit -> words(limit, system) + ", " + limit.citation())
                            .orElse("\u2014"),
                    shown(finding, code),
                    row.verdict());
        }

        private String shown(Finding finding, String code) {
            if (finding.result().amount().isEmpty()) {
                return finding.lack();
            }
            return finding.result() instanceof Known known
                    ? code + known.origin()
                    : Shown.of(finding, system).large();
        }
    }
}
