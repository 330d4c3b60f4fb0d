package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Action;
import kerbfolio.job.Monitor;
import kerbfolio.job.Pack;
import kerbfolio.job.Protection;
import kerbfolio.job.Watched;
import org.jspecify.annotations.Nullable;

/** The limits in force of every battery monitor, and what it does at each, as the checks of its protection ask for them. */
final class Settings {
    private Settings() {}

    /** One row for each monitor and each thing it watches; one monitor without a setting where none is recorded. */
    interface Row {
        Finding of(String subject, Setting setting);
    }

    /**
     * What one monitor has in force for one thing it watches.
     *
     * @param path where it stands, or where it would
     * @param on what is watched
     * @param written the entry; nothing if there is none
     * @param from where the settings were read
     */
    record Setting(
            String path,
            Watched on,
            @Nullable Protection written,
            @Nullable String from) {
        /** The limit in force. */
        Term limit(Car car) {
            return car.evidence()
                    .stated(
                            path + ".at",
                            "limit of the monitor, " + on,
                            on.isVoltage() ? "V" : "°C",
                            written == null ? null : written.at(),
                            from);
        }

        /** 1 if what the monitor does there is one of some actions, 0 if it does something else. */
        Term does(Set<Action> wanted) {
            Action action = written == null ? null : written.does();
            String name = "what the monitor does at " + on;
            if (action == null) {
                return Absent.unrecorded(path + ".does", name, "1");
            }
            boolean isNamed = from != null && !from.isBlank();
            Known known = Evidence.solved(
                    path + ".does",
                    name,
                    wanted.contains(action) ? 1 : 0,
                    "1",
                    action + (isNamed ? ", from " + from : ""));
            return isNamed ? known : known.doubted("nobody is named who states " + name);
        }
    }

    static Stream<Finding> each(Car car, List<Watched> watched, Row row) {
        List<Monitor> monitors = car.pack().section().map(Pack::monitors).orElse(List.of());
        return monitors.isEmpty()
                ? watched.stream()
                        .map(on -> row.of("battery monitor, " + on, new Setting("pack.monitors", on, null, null)))
                : IntStream.range(0, monitors.size())
                        .boxed()
                        .flatMap(i -> watched.stream()
                                .map(on -> row.of(
                                        monitors.get(i).part() + ", " + on,
                                        setting("pack.monitors[" + i + "].limits", monitors.get(i), on))));
    }

    /** Whether each monitor does one of some actions at each thing it watches. */
    static Stream<Finding> acted(Car car, List<Watched> watched, Set<Action> wanted, Limits limits) {
        return each(
                car,
                watched,
                (subject, setting) -> Finding.judged(subject, setting.does(wanted), limits, "monitor-action"));
    }

    private static Setting setting(String path, Monitor monitor, Watched on) {
        List<Protection> limits = monitor.limits();
        for (int i = 0; i < limits.size(); i++) {
            if (limits.get(i).on() == on) {
                return new Setting(path + "[" + i + "]", on, limits.get(i), monitor.from());
            }
        }
        return new Setting(path, on, null, monitor.from());
    }
}
