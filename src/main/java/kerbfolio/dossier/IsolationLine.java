package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Examination;
import kerbfolio.check.Verdict;
import kerbfolio.job.IsolationReading;
import kerbfolio.job.Job;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * A measurement of isolation: how, by whom, with what joined, and what it comes to. What was not joined it does not cover.
 *
 * @param id name of the reading
 * @param how method, instrument, day, who, and the condition of the car
 * @param read what was read
 * @param joined parts on the circuit during the test
 * @param result what it comes to, over the highest working voltage
 * @param rail the rail or pole it is of
 */
public record IsolationLine(
        String id, String how, String read, String joined, Shown result, String rail, Verdict verdict) {

    static List<IsolationLine> all(Job job, List<Examination> examinations, UnitSystem system) {
        if (job.readings() == null) {
            return List.of();
        }
        var lines = new ArrayList<IsolationLine>();
        for (IsolationReading reading : job.readings().isolation()) {
            examinations.stream()
                    .filter(examination -> examination.check().id().equals("isolation-resistance"))
                    .flatMap(examination -> examination.rows().stream())
                    .filter(row -> isOf(row.finding().subject(), reading.id()))
                    .findFirst()
                    .ifPresent(row -> lines.add(line(reading, row, job, system)));
        }
        return List.copyOf(lines);
    }

    private static boolean isOf(String subject, String id) {
        return subject.equals(id) || subject.startsWith(id + ", ");
    }

    private static IsolationLine line(IsolationReading reading, Examination.Row row, Job job, UnitSystem system) {
        String how = words(
                reading.method().toString(),
                reading.instrument() == null ? null : WeighingLine.instrument(job, reading.instrument()),
                reading.date(),
                reading.by(),
                reading.condition());
        String read = Stream.of(
                        value("pack", reading.packVoltage()),
                        value("minus to chassis", reading.minusToChassis()),
                        value("plus to chassis", reading.plusToChassis()),
                        value("larger with resistor", reading.withResistor()),
                        value("resistor", reading.resistor()),
                        value("meter", reading.meterResistance()),
                        value("tested at", reading.testVoltage()),
                        value("shown", reading.resistance()))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        String subject = row.finding().subject();
        return new IsolationLine(
                reading.id(),
                how,
                read,
                reading.joined().isEmpty() ? "not recorded" : String.join(", ", reading.joined()),
                Shown.of(row.finding(), system),
                subject.equals(reading.id())
                        ? ""
                        : subject.substring(reading.id().length() + 2),
                row.verdict());
    }

    private static String value(String name, @Nullable Quantity quantity) {
        return quantity == null ? "" : name + " " + quantity;
    }

    private static String words(@Nullable Object... parts) {
        return Stream.of(parts).filter(Objects::nonNull).map(Object::toString).collect(Collectors.joining(", "));
    }
}
