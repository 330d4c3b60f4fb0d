package kerbfolio.job;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import kerbfolio.quantity.Unit;
import kerbfolio.reading.ComplaintBook;
import kerbfolio.reading.Nearest;
import kerbfolio.reading.Quoted;
import org.jspecify.annotations.Nullable;

/** Names one part of a job file calls another by: each means one thing, and each thing called exists. */
final class Ids {
    private static final String FORM = "[\\p{L}\\p{N}]([\\p{L}\\p{N} ._-]{0,58}[\\p{L}\\p{N}])?";
    private static final Unit MASS = Unit.of("kg");
    private static final Unit LENGTH = Unit.of("m");
    private static final Unit ANGLE = Unit.of("°");
    private static final Unit VOLTAGE = Unit.of("V");
    private static final Unit CURRENT = Unit.of("A");
    private static final Unit RESISTANCE = Unit.of("Ω");
    private static final Unit TIME = Unit.of("s");
    private static final Unit SHARE = Unit.of("%");

    private final Job job;
    private final ComplaintBook complaints;
    private final Map<String, Instrument> instruments = new LinkedHashMap<>();

    Ids(Job job, ComplaintBook complaints) {
        this.job = job;
        this.complaints = complaints;
        job.instruments().stream()
                .filter(instrument -> !instrument.id().isEmpty())
                .forEach(instrument -> instruments.put(instrument.id(), instrument));
    }

    void examine() {
        forms("instruments", instruments.keySet());
        Set<String> parts = forms("parts", job.parts().stream().map(Part::id).toList());
        Set<String> removed =
                forms("removed", job.removed().stream().map(Removed::id).toList());
        Set<String> items =
                forms("punch-list", job.punchList().stream().map(PunchItem::id).toList());
        Set<String> links = forms("links", job.links().stream().map(Link::id).toList());
        Set<String> isolation = forms(
                "readings.isolation",
                isolation().stream().map(IsolationReading::id).toList());
        var connectors = new LinkedHashSet<String>();
        for (Part part : job.parts()) {
            connectors.addAll(forms(
                    "parts[" + part.id() + "].connectors",
                    part.connectors().stream().map(Connector::id).toList()));
        }
        for (String id : removed) {
            if (parts.contains(id)) {
                complaints.add(
                        "removed[" + id + "].id",
                        Quoted.of(id) + " is also the id of a part; give one of them another id");
            }
        }
        calibrations();
        readings();
        var known = new TreeSet<>(instruments.keySet());
        known.addAll(parts);
        known.addAll(removed);
        known.addAll(items);
        known.addAll(links);
        known.addAll(connectors);
        known.addAll(isolation);
        subjects(known);
    }

    private List<IsolationReading> isolation() {
        return job.readings() == null ? List.of() : job.readings().isolation();
    }

    private Set<String> forms(String list, Collection<String> ids) {
        for (String id : ids) {
            if (!id.isEmpty() && !id.matches(FORM)) {
                complaints.add(
                        list + "[" + id + "].id",
                        Quoted.of(id) + " is no id; write at most 60 letters, digits, spaces, - _ or .");
            }
        }
        var set = new LinkedHashSet<>(ids);
        set.remove("");
        return set;
    }

    private void calibrations() {
        var told = new HashSet<String>();
        for (Instrument instrument : job.instruments()) {
            String path = "instruments[" + instrument.id() + "].calibrated-with";
            if (instrument.calibratedWith() != null) {
                known(path, instrument.calibratedWith());
                refuseCircle(path, instrument, told);
            }
        }
    }

    private void refuseCircle(String path, Instrument first, Set<String> told) {
        var chain = new LinkedHashSet<String>();
        for (Instrument at = first; at != null && chain.add(at.id()); at = reference(at)) {
            if (first.id().equals(at.calibratedWith()) && !told.contains(first.id())) {
                told.addAll(chain);
                complaints.add(
                        path,
                        "calibrated in a circle: " + String.join(", ", chain)
                                + "; name the reference the first was set by");
            }
        }
    }

    private @Nullable Instrument reference(Instrument instrument) {
        return instrument.calibratedWith() == null ? null : instruments.get(instrument.calibratedWith());
    }

    private void readings() {
        Weighings weighings = job.weighings();
        if (weighings != null) {
            weighing("weighings.as-received", weighings.asReceived());
            weighing("weighings.as-delivered", weighings.asDelivered());
            if (weighings.tilt() != null) {
                reads("weighings.tilt.instrument", weighings.tilt().instrument(), MASS);
                reads("weighings.tilt.length-instrument", weighings.tilt().lengthInstrument(), LENGTH);
                reads("weighings.tilt.angle-instrument", weighings.tilt().angleInstrument(), ANGLE);
            }
        }
        if (job.vehicle() != null && job.vehicle().rideHeight() != null) {
            rideHeight("vehicle.ride-height.front", job.vehicle().rideHeight().front());
            rideHeight("vehicle.ride-height.rear", job.vehicle().rideHeight().rear());
        }
        job.parts().forEach(part -> reads("parts[" + part.id() + "].instrument", part.instrument(), MASS));
        job.removed().forEach(part -> reads("removed[" + part.id() + "].instrument", part.instrument(), MASS));
        if (job.readings() != null) {
            electrical(job.readings());
        }
    }

    private void electrical(Readings readings) {
        for (IsolationReading reading : readings.isolation()) {
            String path = "readings.isolation[" + reading.id() + "]";
            boolean isVoltmeter = reading.method() == IsolationMethod.VOLTMETER;
            shows(path + ".instrument", reading.instrument(), isVoltmeter ? VOLTAGE : RESISTANCE);
            reads(path + ".resistor-instrument", reading.resistorInstrument(), RESISTANCE);
        }
        if (readings.isolationMonitor() != null) {
            reads(
                    "readings.isolation-monitor.instrument",
                    readings.isolationMonitor().instrument(),
                    RESISTANCE);
        }
        for (int i = 0; i < readings.bonding().size(); i++) {
            BondingReading reading = readings.bonding().get(i);
            reads("readings.bonding[" + i + "].instrument", reading.instrument(), VOLTAGE);
            reads("readings.bonding[" + i + "].current-instrument", reading.currentInstrument(), CURRENT);
        }
        for (int i = 0; i < readings.decay().size(); i++) {
            DecayReading reading = readings.decay().get(i);
            reads("readings.decay[" + i + "].instrument", reading.instrument(), VOLTAGE);
            reads("readings.decay[" + i + "].time-instrument", reading.timeInstrument(), TIME);
        }
        if (readings.cells() != null) {
            shows("readings.cells.instrument", readings.cells().instrument(), VOLTAGE);
        }
        if (readings.charge() != null) {
            reads("readings.charge.instrument", readings.charge().instrument(), SHARE);
        }
    }

    /** What a monitor of the car itself shows is a reading of that part. */
    private void shows(String path, @Nullable String id, Unit unit) {
        if (job.parts().stream().noneMatch(part -> part.id().equals(id))) {
            reads(path, id, unit);
        }
    }

    private void weighing(String path, @Nullable Weighing weighing) {
        if (weighing != null) {
            reads(path + ".instrument", weighing.instrument(), MASS);
        }
    }

    private void rideHeight(String path, @Nullable RideHeight height) {
        if (height != null) {
            reads(path + ".instrument", height.instrument(), LENGTH);
        }
    }

    /** The instrument a reading names exists, and its error is of the reading's kind. */
    private void reads(String path, @Nullable String id, Unit unit) {
        if (id == null || !known(path, id)) {
            return;
        }
        Instrument instrument = instruments.get(id);
        if (instrument != null
                && instrument.fixed() != null
                && !instrument.fixed().unit().measuresLike(unit)) {
            complaints.add(
                    path,
                    Quoted.of(id) + " has a fixed error of " + instrument.fixed() + " and cannot have read " + unit
                            + "; name another instrument or write its error in " + unit);
        }
    }

    private boolean known(String path, String id) {
        if (instruments.containsKey(id)) {
            return true;
        }
        complaints.add(
                path,
                "no instrument " + Quoted.of(id)
                        + (instruments.isEmpty()
                                ? "; list it under instruments"
                                : Nearest.hint(id, instruments.keySet())));
        return false;
    }

    private void subjects(Set<String> known) {
        for (int i = 0; i < job.photos().size(); i++) {
            String subject = job.photos().get(i).subject();
            if (subject != null && !known.contains(subject) && !Sections.NAMES.contains(subject)) {
                complaints.add(
                        "photos[" + i + "].subject",
                        "nothing is called " + Quoted.of(subject)
                                + Nearest.hint(
                                        subject,
                                        known,
                                        "; write the id of a part, instrument or punch-list item, or a section's"
                                                + " name"));
            }
        }
    }
}
