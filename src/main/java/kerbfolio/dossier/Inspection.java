package kerbfolio.dossier;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.car.Corner;
import kerbfolio.car.Ledger;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.formula.Term;
import kerbfolio.job.Instrument;
import kerbfolio.job.Job;
import kerbfolio.job.Position;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The part for the inspector: registration data, the weight change, what the home set asks and where the answer is.
 *
 * @param homeSet title of the home set
 * @param comparedSets titles of the sets printed for comparison
 * @param weights masses before and after
 * @param receivedNote how the masses as received came to be known, where nobody weighed the car; else empty
 * @param fitted what went in
 * @param removed what came out
 * @param ledger what the ledger says changed: whole car, front, rear
 * @param highVoltage the traction circuit
 * @param preparation each requirement, what is missing first
 * @param weighings when, with what and by whom the car was weighed
 * @param documents papers of the job
 * @param photos pictures of the job, by file
 * @param instruments what measured
 */
public record Inspection(
        String homeSet,
        List<String> comparedSets,
        List<WeightLine> weights,
        String receivedNote,
        List<LedgerLine> fitted,
        List<LedgerLine> removed,
        List<LedgerSum> ledger,
        HighVoltage highVoltage,
        Preparation preparation,
        List<WeighingLine> weighings,
        List<DocumentLine> documents,
        List<PhotoLine> photos,
        List<InstrumentLine> instruments) {

    /** A wheel, an axle or the whole car: before, after, the change, and what is permitted. */
    public record WeightLine(String what, Shown before, Shown after, Shown change, Shown permitted, boolean isSum) {}

    /** Something fitted or removed. */
    public record LedgerLine(String name, Shown mass, Shown place, String basis, String origin, String zone) {}

    /** What scales and ledger say changed. */
    public record LedgerSum(String what, Shown scales, Shown ledger) {}

    /** A paper. */
    public record DocumentLine(String kind, String number, String date, String file, String note) {}

    /** A picture. */
    public record PhotoLine(String file, String caption, String subject) {}

    /** An instrument. */
    public record InstrumentLine(
            String id,
            String kind,
            String serial,
            String error,
            String calibratedWith,
            String calibrated,
            String due) {}

    static Inspection of(Car car, List<Examination> examinations, Limits limits, UnitSystem system) {
        Job job = car.job();
        return new Inspection(
                limits.home().title()
                        + (job.job().homeSet() == null ? ", taken because the job names no home set" : ""),
                limits.compared().stream().map(set -> set.title()).toList(),
                weights(car, system),
                receivedNote(job),
                car.ledger().fitted().stream()
                        .map(line -> line(line, zone(job, line.id()), system))
                        .toList(),
                car.ledger().removed().stream()
                        .map(line -> line(line, zone(job, line.id()), system))
                        .toList(),
                sums(car, system),
                HighVoltage.of(car, examinations, system),
                Preparation.of(examinations, limits),
                WeighingLine.all(job),
                job.documents().stream()
                        .map(d -> new DocumentLine(
                                d.kind() == null
                                        ? Head.or(null)
                                        : d.kind().toString().replace('-', ' '),
                                Head.or(d.number()),
                                Head.or(d.date()),
                                Head.or(d.file()),
                                Head.or(d.note())))
                        .toList(),
                job.photos().stream()
                        .map(p -> new PhotoLine(p.file(), Head.or(p.caption()), Head.or(p.subject())))
                        .toList(),
                job.instruments().stream()
                        .map(i -> new InstrumentLine(
                                i.id(),
                                Head.or(i.kind()),
                                Head.or(i.serial()),
                                error(i),
                                WeighingLine.instrument(job, i.calibratedWith()),
                                Head.or(i.calibrated()),
                                due(i, job)))
                        .toList());
    }

    private static String due(Instrument instrument, Job job) {
        LocalDate due = instrument.due();
        String late = due != null && due.isBefore(job.job().date()) ? ", overdue" : "";
        return Head.or(due) + late;
    }

    private static String error(Instrument instrument) {
        var words = new ArrayList<String>();
        Optional.ofNullable(instrument.ofReading()).ifPresent(share -> words.add(share + " of reading"));
        Optional.ofNullable(instrument.fixed()).ifPresent(fixed -> words.add(fixed + " fixed"));
        return words.isEmpty() ? "\u2014" : String.join(", ", words);
    }

    private static List<WeightLine> weights(Car car, UnitSystem system) {
        var lines = new ArrayList<WeightLine>();
        if (car.received().hasCorners() || car.delivered().hasCorners()) {
            for (Corner corner : Corner.values()) {
                lines.add(new WeightLine(
                        corner.toString(),
                        Shown.of(car.received().corner(corner), system),
                        Shown.of(car.delivered().corner(corner), system),
                        Shown.of(car.change(corner), system).signed(),
                        Shown.NOTHING,
                        false));
            }
        }
        for (Axle axle : Axle.values()) {
            lines.add(new WeightLine(
                    axle.toString(),
                    Shown.of(car.received().axle(axle), system),
                    Shown.of(car.delivered().axle(axle), system),
                    Shown.of(car.change(axle), system).signed(),
                    Shown.of(car.rating(axle), system),
                    true));
        }
        lines.add(new WeightLine(
                "whole car",
                Shown.of(car.received().total(), system),
                Shown.of(car.delivered().total(), system),
                Shown.of(car.change(), system).signed(),
                Shown.of(car.grossRating(), system),
                true));
        return List.copyOf(lines);
    }

    private static String receivedNote(Job job) {
        var weighing = job.weighings() == null ? null : job.weighings().asReceived();
        String by = weighing == null ? null : weighing.statedBy();
        return by == null
                ? ""
                : "The masses as received are published figures (" + by + "), stated and not weighed on this car; the "
                        + "ledger is therefore not closed against the scales.";
    }

    private static List<LedgerSum> sums(Car car, UnitSystem system) {
        if (car.ledger().isEmpty() || !Shown.of(car.ledger().change(), system).isKnown()) {
            return List.of();
        }
        var sums = new ArrayList<LedgerSum>();
        sums.add(sum("whole car", car.change(), car.ledger().change(), system));
        for (Axle axle : Axle.values()) {
            sums.add(sum(axle.toString(), car.change(axle), car.ledger().change(axle), system));
        }
        return List.copyOf(sums);
    }

    private static LedgerSum sum(String what, Term scales, Term ledger, UnitSystem system) {
        return new LedgerSum(
                what,
                Shown.of(scales, system).signed(),
                Shown.of(ledger, system).signed());
    }

    private static LedgerLine line(Ledger.Line line, String zone, UnitSystem system) {
        return new LedgerLine(
                line.name(),
                Shown.of(line.mass(), system),
                Shown.of(line.x(), system),
                line.mass().basis().word(),
                line.mass().origin(),
                zone);
    }

    /** Where a fitted or removed thing sits, in words. */
    private static String zone(Job job, String id) {
        return Stream.concat(
                        job.parts().stream()
                                .filter(part -> part.id().equals(id))
                                .map(part -> zone(part.position())),
                        job.removed().stream()
                                .filter(item -> item.id().equals(id))
                                .map(item -> zone(item.position())))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse("");
    }

    private static @Nullable String zone(@Nullable Position position) {
        return position == null ? null : position.zone();
    }
}
