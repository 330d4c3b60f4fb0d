package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.job.Job;
import kerbfolio.job.State;
import kerbfolio.job.Tilt;
import kerbfolio.job.Weighing;
import org.jspecify.annotations.Nullable;

/**
 * One weighing as it was done.
 *
 * @param what which weighing
 * @param date the day, or a dash
 * @param scales what weighed it, or who published the figures
 * @param by who weighed it, or a dash
 * @param ticket ticket number, or a dash
 * @param state what was in the car, and anything noted
 */
public record WeighingLine(String what, String date, String scales, String by, String ticket, String state) {
    static List<WeighingLine> all(Job job) {
        var lines = new ArrayList<WeighingLine>();
        if (job.weighings() != null) {
            add(job, "as received", job.weighings().asReceived(), lines);
            add(job, "as delivered", job.weighings().asDelivered(), lines);
            Tilt tilt = job.weighings().tilt();
            if (tilt != null) {
                lines.add(new WeighingLine(
                        "rear axle raised",
                        Head.or(tilt.date()),
                        instrument(job, tilt.instrument()),
                        "\u2014",
                        "\u2014",
                        Head.or(tilt.note())));
            }
        }
        return List.copyOf(lines);
    }

    private static void add(Job job, String what, @Nullable Weighing weighing, List<WeighingLine> lines) {
        if (weighing != null) {
            lines.add(new WeighingLine(
                    what,
                    Head.or(weighing.date()),
                    weighing.statedBy() == null ? instrument(job, weighing.instrument()) : weighing.statedBy(),
                    Head.or(weighing.by()),
                    Head.or(weighing.ticket()),
                    state(weighing.state())));
        }
    }

    private static String state(@Nullable State state) {
        if (state == null) {
            return "\u2014";
        }
        return Stream.of(
                        named("fuel ", state.fuel()),
                        named("occupants ", state.occupants()),
                        named("ballast ", state.ballast()),
                        state.note())
                .filter(Objects::nonNull)
                .collect(Collectors.joining("; "));
    }

    private static @Nullable String named(String what, @Nullable Object value) {
        return value == null ? null : what + value;
    }

    /** An instrument by its kind and serial number. */
    static String instrument(Job job, @Nullable String id) {
        return job.instruments().stream()
                .filter(instrument -> instrument.id().equals(id))
                .map(instrument -> Stream.of(instrument.kind(), instrument.serial())
                        .filter(Objects::nonNull)
                        .collect(Collectors.joining(" ")))
                .findFirst()
                .orElse(Head.or(id));
    }
}
