package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Verdict;
import kerbfolio.job.Closing;
import kerbfolio.job.Hold;
import kerbfolio.job.Job;
import kerbfolio.job.PunchItem;
import kerbfolio.job.Tyre;
import kerbfolio.job.Vehicle;
import kerbfolio.quantity.UnitSystem;
import kerbfolio.release.GateReport;
import kerbfolio.release.NextReading;
import kerbfolio.release.Release;
import org.jspecify.annotations.Nullable;

/**
 * The part for the customer: what may the car do, what is open, what is in it.
 *
 * @param gates the four gates with every reason
 * @param next the readings worth taking next
 * @param glance the car at a glance
 * @param open the punch list, open items
 * @param closed the punch list, closed items
 * @param waivers findings let pass by name
 * @param notApplicable checks somebody says do not apply
 * @param figures id of a finding that is not met or undecided to its figure and limit
 * @param asides findings not met that hold no gate
 */
public record Handover(
        List<GateReport> gates,
        List<NextReading> next,
        List<Fact> glance,
        List<PunchLine> open,
        List<PunchLine> closed,
        List<NamedLine> waivers,
        List<NamedLine> notApplicable,
        Map<String, String> figures,
        List<String> asides) {

    /** The checks whose margin is what the car, and each axle, may still take. */
    private static final Set<String> MARGINS = Set.of("gross-margin", "axle-margin");

    /** An item of the punch list. */
    public record PunchLine(
            String id,
            String text,
            String area,
            String holds,
            String owner,
            String raised,
            String due,
            String note,
            String closing) {}

    /** Something somebody answers for by name. */
    public record NamedLine(String what, String by, String date, String reason) {}

    static Handover of(Car car, Release release, List<Examination> spoken, UnitSystem system) {
        Job job = car.job();
        return new Handover(
                release.gates(),
                release.next(),
                glance(car, spoken, system),
                job.punchList().stream()
                        .filter(item -> !Release.isClosed(item))
                        .map(Handover::line)
                        .toList(),
                job.punchList().stream()
                        .filter(Release::isClosed)
                        .map(Handover::line)
                        .toList(),
                job.waivers().stream()
                        .map(w -> new NamedLine(w.finding(), w.by(), Head.or(w.date()), w.reason()))
                        .toList(),
                job.notApplicable().stream()
                        .map(n -> new NamedLine(n.check(), n.by(), Head.or(n.date()), n.reason()))
                        .toList(),
                figures(spoken, system),
                asides(spoken, system));
    }

    private static Map<String, String> figures(List<Examination> spoken, UnitSystem system) {
        var figures = new LinkedHashMap<String, String>();
        for (Examination examination : spoken) {
            for (Examination.Row row : examination.rows()) {
                if (row.verdict() == Verdict.NOT_MET || row.verdict() == Verdict.UNDECIDED) {
                    figures.put(row.id(), figure(row, system));
                }
            }
        }
        return Collections.unmodifiableMap(figures);
    }

    private static List<String> asides(List<Examination> spoken, UnitSystem system) {
        return spoken.stream()
                .filter(examination -> examination.check().gate().isEmpty())
                .flatMap(examination -> examination.rows().stream()
                        .filter(row -> row.verdict() == Verdict.NOT_MET)
                        .map(row -> examination.check().question() + " "
                                + row.finding().subject() + ": not met, " + figure(row, system)))
                .toList();
    }

    private static String figure(Examination.Row row, UnitSystem system) {
        String limit = row.finding()
                .limit()
                .map(l -> ", " + l.bound() + " " + Shown.of(l, system))
                .orElse("");
        return Shown.of(row.finding(), system) + limit;
    }

    private static List<Fact> glance(Car car, List<Examination> spoken, UnitSystem system) {
        var facts = new ArrayList<Fact>();
        Fact received = Fact.of("mass as received", car.received().total(), system);
        facts.add(car.received().isStated() ? received.asStated() : received);
        facts.add(Fact.of("mass as delivered", car.delivered().total(), system));
        facts.add(Fact.of("change of mass", car.change(), system));
        for (Axle axle : Axle.values()) {
            facts.add(Fact.of(axle + " as delivered", car.delivered().axle(axle), system));
        }
        facts.add(Fact.of("permitted gross mass", car.grossRating(), system));
        for (Axle axle : Axle.values()) {
            facts.add(Fact.of("permitted mass, " + axle, car.rating(axle), system));
        }
        facts.addAll(left(spoken, system));
        facts.add(Fact.of("wheelbase", car.size().wheelbase(), system));
        facts.add(Fact.of("top speed", car.topSpeed(), system));
        facts.add(Fact.of("traction battery, highest voltage", car.pack().highestVoltage(), system));
        facts.add(Fact.of("traction battery, energy", car.pack().energy(), system));
        facts.addAll(tyres(car));
        facts.removeIf(fact -> !fact.value().isKnown());
        return List.copyOf(facts);
    }

    /** What may still be loaded, as the checks of the masses as delivered found it. */
    private static List<Fact> left(List<Examination> spoken, UnitSystem system) {
        return spoken.stream()
                .filter(examination -> MARGINS.contains(examination.check().id()))
                .flatMap(examination -> examination.rows().stream())
                .map(Examination.Row::finding)
                .map(finding -> new Fact(
                        "may still be loaded, " + subject(finding),
                        Shown.of(finding, system),
                        finding.result().basis().word(),
                        "from the masses above"))
                .toList();
    }

    private static String subject(Finding finding) {
        return finding.subject().equals("as delivered")
                ? "whole car"
                : finding.subject().replace(", as delivered", "");
    }

    private static List<Fact> tyres(Car car) {
        Vehicle vehicle = car.job().vehicle();
        if (vehicle == null || vehicle.tyres() == null) {
            return List.of();
        }
        return List.of(
                Fact.words("front tyres", words(vehicle.tyres().front()), "sidewall"),
                Fact.words("rear tyres", words(vehicle.tyres().rear()), "sidewall"));
    }

    private static @Nullable String words(@Nullable Tyre tyre) {
        if (tyre == null || tyre.size() == null) {
            return null;
        }
        return tyre.size() + (tyre.pressure() == null ? "" : " at " + tyre.pressure());
    }

    private static PunchLine line(PunchItem item) {
        return new PunchLine(
                item.id(),
                item.text(),
                Head.or(item.area()),
                item.holds() == Hold.NONE ? "nothing" : item.holds().toString(),
                Head.or(item.owner()),
                Head.or(item.raised()),
                Head.or(item.due()),
                item.note() == null ? "" : item.note(),
                closing(item));
    }

    private static String closing(PunchItem item) {
        Closing closed = item.closed();
        if (closed == null) {
            return "";
        }
        var words = new ArrayList<String>();
        words.add(closed.by() == null ? "nobody is named" : closed.by());
        Optional.ofNullable(closed.date()).ifPresent(date -> words.add(date.toString()));
        Optional.ofNullable(closed.reading()).ifPresent(words::add);
        Optional.ofNullable(closed.photo()).ifPresent(photo -> words.add("photo " + photo));
        if (!Release.isClosed(item)) {
            words.add("still open: an item that holds a gate closes with a name and a reading or photo");
        }
        return String.join(", ", words);
    }
}
