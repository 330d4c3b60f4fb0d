package kerbfolio;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSets;
import kerbfolio.checks.CheckList;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Job;
import kerbfolio.job.JobFile;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import kerbfolio.release.Release;

/** A job as the text of a job file, of which a test varies the one value it speaks of. */
public final class JobText {
    private static final String NOTHING_ABOARD = "{ occupants: \"0\", ballast: 0 kg }";
    private static final String CALIBRATED = "calibrated: 2026-01-01, due: 2027-01-01";

    /** A map of keys, a list of entries, or the text of a value. */
    private final Map<String, Object> keys = new LinkedHashMap<>();

    private JobText() {}

    /** A job that says who it is and nothing else. */
    public static JobText blank() {
        return new JobText()
                .with("kerbfolio", "1")
                .with("job.number", "\"1\"")
                .with("job.revision", "\"1\"")
                .with("job.date", "2026-10-01")
                .with("job.tier", "full")
                .with("job.prepared-by", "A. Tester")
                .with("job.home-set", "un-ece");
    }

    /**
     * A car on two axle scales of ± 1 kg, 750 + 650 kg as received, 814 + 786 kg as delivered, on a plate of 850 + 900 =
     * 1700 kg, with every limit confirmed.
     */
    public static JobText onTwoAxles() {
        return blank().with("vehicle.wheelbase", "2500 mm")
                .with("vehicle.track", "{ front: 1400 mm, rear: 1440 mm }")
                .with("vehicle.seats", "\"1\"")
                .with("vehicle.top-speed", "120 km/h")
                .with("vehicle.ratings.gross", "1700 kg")
                .with("vehicle.ratings.front-axle", "850 kg")
                .with("vehicle.ratings.rear-axle", "900 kg")
                .with("vehicle.ratings.from", "plate")
                .with("vehicle.tyres.front", "{ load-index: \"91\", speed-symbol: S }")
                .with("vehicle.tyres.rear", "{ load-index: \"91\", speed-symbol: S }")
                .add("instruments", "{ id: pads, kind: axle scales, serial: \"7\", fixed: 1 kg, " + CALIBRATED + " }")
                .add("instruments", "{ id: tape, kind: tape, fixed: 1 mm, " + CALIBRATED + " }")
                .add("instruments", "{ id: level, kind: inclinometer, fixed: 0.1°, " + CALIBRATED + " }")
                .with("weighings.as-received.instrument", "pads")
                .with("weighings.as-received.date", "2026-08-01")
                .with("weighings.as-received.state", NOTHING_ABOARD)
                .with("weighings.as-received.axles", "{ front: 750 kg, rear: 650 kg }")
                .with("weighings.as-delivered.instrument", "pads")
                .with("weighings.as-delivered.date", "2026-09-30")
                .with("weighings.as-delivered.state", NOTHING_ABOARD)
                .with("weighings.as-delivered.axles.front", "814 kg")
                .with("weighings.as-delivered.axles.rear", "786 kg")
                .confirming(
                        "un-ece", "gross-margin, axle-margin, occupant-mass, axle-rating-sum, tyre-load, tyre-speed")
                .confirming("tables", "tyre-load-index, tyre-speed-symbol");
    }

    /** The same car on four wheel scales, 400 + 350 + 340 + 310 kg as received, 420 + 394 + 398 + 388 kg as delivered. */
    public static JobText onFourCorners() {
        return onTwoAxles()
                .without("weighings.as-received.axles")
                .without("weighings.as-delivered.axles")
                .corners("as-received", 400, 350, 340, 310)
                .corners("as-delivered", 420, 394, 398, 388);
    }

    /** Wheel masses of a weighing in kg. */
    public JobText corners(String weighing, double leftFront, double rightFront, double leftRear, double rightRear) {
        String path = "weighings." + weighing + ".corners.";
        return with(path + "left-front", leftFront + " kg")
                .with(path + "right-front", rightFront + " kg")
                .with(path + "left-rear", leftRear + " kg")
                .with(path + "right-rear", rightRear + " kg");
    }

    /** Judged by another set, of which nobody confirmed anything. */
    public JobText homeSet(String set) {
        return without("confirmations").with("job.home-set", set);
    }

    /** Somebody confirms limits of a set, or tables. */
    public JobText confirming(String set, String limits) {
        return add(
                "confirmations",
                "{ set: " + set + ", limits: [" + limits + "], edition: \"2020\", by: B. Reader, date: 2026-09-01 }");
    }

    /** Sets the value at a path such as {@code weighings.as-delivered.axles.front}. */
    public JobText with(String path, String value) {
        return with(path, (Object) value);
    }

    private JobText with(String path, Object value) {
        parent(path).put(last(path), value);
        return this;
    }

    /** Takes out the value or section at a path. */
    public JobText without(String path) {
        parent(path).remove(last(path));
        return this;
    }

    /** Adds an entry to a list. */
    public JobText add(String list, String entry) {
        if (!(parent(list).computeIfAbsent(last(list), key -> new ArrayList<>()) instanceof List<?> entries)) {
            throw new IllegalArgumentException(list + " is no list");
        }
        var more = new ArrayList<Object>(entries);
        more.add(entry);
        return with(list, more);
    }

    /** Changes the text of one entry of a list, found by its id; what is changed stands in it exactly once. */
    public JobText alter(String list, String id, String from, String to) {
        return add(list, "").rewrite(list, entry -> {
            if (!entry.matches("(?s)\\{ (id|part|of|on): " + Pattern.quote(id) + "[, ].*")) {
                return entry;
            }
            if (entry.indexOf(from) < 0 || entry.indexOf(from) != entry.lastIndexOf(from)) {
                throw new IllegalArgumentException(from + " does not stand once in " + entry);
            }
            return entry.replace(from, to);
        });
    }

    /** Takes an entry out of a list, found by its id. */
    public JobText drop(String list, String id) {
        return add(list, "")
                .rewrite(
                        list,
                        entry ->
                                entry.matches("(?s)\\{ (id|part|of|on): " + Pattern.quote(id) + "[, ].*") ? "" : entry);
    }

    private JobText rewrite(String list, UnaryOperator<String> change) {
        List<?> before = (List<?>) parent(list).get(last(list));
        List<String> after = before.stream()
                .map(String::valueOf)
                .map(entry -> entry.isEmpty() ? entry : change.apply(entry))
                .filter(entry -> !entry.isEmpty())
                .toList();
        if (after.equals(before.subList(0, before.size() - 1))) {
            throw new IllegalArgumentException("nothing changed in " + list);
        }
        return with(list, after);
    }

    private Map<String, Object> parent(String path) {
        Map<String, Object> at = keys;
        for (String key :
                path.contains(".") ? path.substring(0, path.lastIndexOf('.')).split("\\.") : new String[0]) {
            at = inside(at, key);
        }
        return at;
    }

    @SuppressWarnings("unchecked") // only this class puts anything in
    private static Map<String, Object> inside(Map<String, Object> keys, String key) {
        return (Map<String, Object>)
                keys.compute(key, (name, held) -> held instanceof Map ? held : new LinkedHashMap<String, Object>());
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    @Override
    public String toString() {
        var text = new StringBuilder();
        write(keys, "", text);
        return text.toString();
    }

    private static void write(Map<?, ?> keys, String indent, StringBuilder text) {
        keys.forEach((key, value) -> {
            text.append(indent).append(key).append(":");
            if (value instanceof Map<?, ?> inner) {
                text.append('\n');
                write(inner, indent + "  ", text);
            } else if (value instanceof List<?> entries) {
                text.append('\n');
                entries.forEach(entry ->
                        text.append(indent).append("  - ").append(entry).append('\n'));
            } else {
                text.append(' ').append(value).append('\n');
            }
        });
    }

    /** Writes it to a folder as a job file. */
    public Path writeTo(Path folder) {
        try {
            return Files.writeString(folder.resolve("job.yaml"), toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The job as read; complaints fail the test that wrote it. */
    public JobFile file() {
        try {
            byte[] bytes = toString().getBytes(UTF_8);
            var parsed = RecordReader.read("job.yaml", bytes, Job.class);
            return new JobFile(parsed.value(), Path.of("job.yaml"), bytes, parsed.places());
        } catch (Complaints e) {
            throw new IllegalArgumentException(this + "\n" + e.getMessage(), e);
        }
    }

    public Job job() {
        return file().job();
    }

    public Car car() {
        return new Car(job());
    }

    public Limits limits() {
        try {
            return RequirementSets.limits(file());
        } catch (Complaints | IOException e) {
            throw new IllegalArgumentException(toString(), e);
        }
    }

    /** One check run over it. */
    public Examination examined(Check check) {
        return Examination.of(check, car(), limits());
    }

    /** What a check finds for a subject. */
    public Found found(Check check, String subject) {
        return new Found(examined(check).rows().stream()
                .map(Examination.Row::finding)
                .filter(finding -> finding.subject().equals(subject))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no finding for " + subject)));
    }

    /** What the only finding of a check says. */
    public Found found(Check check) {
        List<Examination.Row> rows = examined(check).rows();
        if (rows.size() != 1) {
            throw new IllegalArgumentException(rows.size() + " findings");
        }
        return new Found(rows.get(0).finding());
    }

    /** What would be printed of it. */
    public Dossier dossier() {
        return Dossier.of(car(), release(), limits(), "Kerbfolio 0", "0000-0000-0000-0000");
    }

    /** The gates after every check of the program. */
    public Release release() {
        var car = car();
        Limits limits = limits();
        return new Release(
                car.job(),
                CheckList.ALL.stream()
                        .map(check -> Examination.of(check, car, limits))
                        .toList(),
                limits);
    }
}
