package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Finding;
import kerbfolio.formula.Term;
import kerbfolio.job.Action;
import kerbfolio.job.Monitor;
import kerbfolio.job.Protection;
import kerbfolio.job.Watched;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** The limits in force of every battery monitor, and what it does at each, as the checks of its protection ask for them. */
final class Settings {
    private static final String MONITOR = "battery monitor";

    private Settings() {}

    /** One row for each monitor and each thing it watches; one monitor without a setting where none is recorded. */
    interface Row {
        Finding of(String subject, @Nullable Monitor monitor, Watched watched);
    }

    static Stream<Finding> each(Car car, List<Watched> watched, Row row) {
        List<Monitor> monitors =
                car.pack().section().map(pack -> pack.monitors()).orElse(List.of());
        return monitors.isEmpty()
                ? watched.stream().map(on -> row.of(MONITOR + ", " + on, null, on))
                : monitors.stream()
                        .flatMap(monitor ->
                                watched.stream().map(on -> row.of(monitor.part() + ", " + on, monitor, on)));
    }

    /** The limit in force. */
    static Term limit(Car car, @Nullable Monitor monitor, Watched on) {
        Protection protection = protection(monitor, on);
        return car.evidence()
                .stated(
                        path(monitor, on) + ".at",
                        "limit of the monitor, " + on,
                        on.isVoltage() ? "V" : "°C",
                        protection == null ? null : protection.at(),
                        monitor == null ? null : monitor.from());
    }

    /** 1 if what the monitor does at a limit is one of some actions, 0 if it does something else. */
    static Term does(Car car, @Nullable Monitor monitor, Watched on, Set<Action> wanted) {
        Protection protection = protection(monitor, on);
        Action action = protection == null ? null : protection.does();
        Quantity isWanted = action == null ? null : Quantity.of(wanted.contains(action) ? 1 : 0, Unit.ONE);
        return car.evidence()
                .stated(
                        path(monitor, on) + ".does",
                        "what the monitor does at " + on + (action == null ? "" : ": " + action),
                        "1",
                        isWanted,
                        monitor == null ? null : monitor.from());
    }

    private static String path(@Nullable Monitor monitor, Watched on) {
        return monitor == null ? "pack.monitors" : "pack.monitors[" + monitor.part() + "].limits[" + on + "]";
    }

    private static @Nullable Protection protection(@Nullable Monitor monitor, Watched on) {
        return monitor == null
                ? null
                : monitor.limits().stream()
                        .filter(limit -> limit.on() == on)
                        .findFirst()
                        .orElse(null);
    }
}
