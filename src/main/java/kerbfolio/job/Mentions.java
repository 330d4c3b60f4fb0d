package kerbfolio.job;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import kerbfolio.reading.ComplaintBook;
import kerbfolio.reading.Nearest;
import kerbfolio.reading.Quoted;
import org.jspecify.annotations.Nullable;

/** Parts, links and readings that the pack, the readings and the labels speak of: each is there, and is what it must be. */
final class Mentions {
    private final Job job;
    private final ComplaintBook complaints;
    private final Set<String> parts;
    private final Set<String> boxes;

    Mentions(Job job, ComplaintBook complaints) {
        this.job = job;
        this.complaints = complaints;
        this.parts = job.parts().stream().map(Part::id).collect(Collectors.toCollection(LinkedHashSet::new));
        this.boxes = of(Role.BATTERY);
    }

    private Set<String> of(Role role) {
        return job.parts().stream()
                .filter(part -> part.role() == role)
                .map(Part::id)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    void examine() {
        if (job.pack() != null) {
            pack(job.pack());
        }
        if (job.readings() != null) {
            readings(job.readings());
        }
        var labelled = new LinkedHashSet<>(parts);
        job.links().forEach(link -> labelled.add(link.id()));
        for (int i = 0; i < job.labels().size(); i++) {
            called("labels[" + i + "].on", "part or link", job.labels().get(i).on(), labelled);
        }
    }

    private void pack(Pack pack) {
        var seen = new HashSet<String>();
        for (int i = 0; i < pack.boxes().size(); i++) {
            String path = "pack.boxes[" + i + "].part";
            String box = pack.boxes().get(i).part();
            if (called(path, "part of role battery", box, boxes) && !seen.add(box)) {
                complaints.add(path, Quoted.of(box) + " stands here twice; write all its modules in one entry");
            }
        }
        if (pack.precharge() != null) {
            called(
                    "pack.precharge.resistor",
                    "part of role precharge-resistor",
                    pack.precharge().resistor(),
                    of(Role.PRECHARGE_RESISTOR));
        }
        for (int i = 0; i < pack.monitors().size(); i++) {
            String path = "pack.monitors[" + i + "]";
            Monitor monitor = pack.monitors().get(i);
            called(path + ".part", "part", monitor.part(), parts);
            for (int k = 0; k < monitor.watches().size(); k++) {
                called(
                        path + ".watches[" + k + "].part",
                        "part of role battery",
                        monitor.watches().get(k).part(),
                        boxes);
            }
        }
    }

    private void readings(Readings readings) {
        for (IsolationReading reading : readings.isolation()) {
            List<String> joined = reading.joined();
            for (int i = 0; i < joined.size(); i++) {
                called("readings.isolation[" + reading.id() + "].joined[" + i + "]", "part", joined.get(i), parts);
            }
        }
        if (readings.isolationMonitor() != null) {
            called(
                    "readings.isolation-monitor.isolation",
                    "isolation reading",
                    readings.isolationMonitor().isolation(),
                    readings.isolation().stream().map(IsolationReading::id).toList());
        }
        for (int i = 0; i < readings.bonding().size(); i++) {
            called(
                    "readings.bonding[" + i + "].of",
                    "part",
                    readings.bonding().get(i).of(),
                    parts);
        }
        for (int i = 0; i < readings.decay().size(); i++) {
            called(
                    "readings.decay[" + i + "].of",
                    "part",
                    readings.decay().get(i).of(),
                    parts);
        }
    }

    private boolean called(String path, String what, @Nullable String id, Collection<String> known) {
        if (id == null || id.isEmpty() || known.contains(id)) {
            return id != null;
        }
        String otherwise = known.isEmpty() ? "; none is recorded" : "; write the id of one that is recorded";
        complaints.add(path, "no " + what + " " + Quoted.of(id) + Nearest.hint(id, known, otherwise));
        return false;
    }
}
