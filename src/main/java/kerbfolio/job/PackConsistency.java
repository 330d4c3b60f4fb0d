package kerbfolio.job;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.reading.ComplaintBook;
import kerbfolio.reading.Quoted;
import org.jspecify.annotations.Nullable;

/** What the counts of a pack must be together, and what a battery monitor can watch of it. */
final class PackConsistency {
    private static final Unit VOLT = Unit.of("V");
    private static final Unit CELSIUS = Unit.of("°C");

    private final Pack pack;
    private final ComplaintBook complaints;
    private final Map<String, Quantity> modulesIn = new HashMap<>();

    PackConsistency(Pack pack, ComplaintBook complaints) {
        this.pack = pack;
        this.complaints = complaints;
        pack.boxes().stream()
                .filter(box -> box.modules() != null)
                .forEach(box -> modulesIn.put(box.part(), box.modules()));
    }

    void examine() {
        counts();
        strings();
        boxes();
        for (int i = 0; i < pack.monitors().size(); i++) {
            monitor("pack.monitors[" + i + "].", pack.monitors().get(i));
        }
    }

    private void counts() {
        var plausibility = new Plausibility(complaints);
        plausibility.count("pack.modules", pack.modules(), 1, Numbers.MOST);
        plausibility.count("pack.strings", pack.strings(), 1, Numbers.MOST);
        Module module = pack.module();
        if (module != null) {
            plausibility.count("pack.module.cell-groups", module.cellGroups(), 1, Numbers.MOST);
            plausibility.count("pack.module.cells-in-parallel", module.cellsInParallel(), 1, Numbers.MOST);
            plausibility.count("pack.module.temperature-points", module.temperaturePoints(), 0, Numbers.MOST);
        }
        for (int i = 0; i < pack.boxes().size(); i++) {
            plausibility.count(
                    "pack.boxes[" + i + "].modules", pack.boxes().get(i).modules(), 1, Numbers.MOST);
        }
    }

    private static boolean isCount(@Nullable Quantity quantity) {
        return quantity != null && Plausibility.isCount(quantity, 1, Numbers.MOST);
    }

    private void strings() {
        Quantity modules = pack.modules();
        Quantity strings = pack.strings();
        if (modules != null
                && strings != null
                && isCount(modules)
                && isCount(strings)
                && modules.number() % strings.number() != 0) {
            complaints.add(
                    "pack.modules",
                    modules + " modules do not divide by " + strings
                            + " strings; write the modules of all strings together");
        }
    }

    private void boxes() {
        Quantity modules = pack.modules();
        if (modules == null
                || !isCount(modules)
                || pack.boxes().isEmpty()
                || !pack.boxes().stream().map(Box::modules).allMatch(PackConsistency::isCount)) {
            return;
        }
        double sum = pack.boxes().stream()
                .mapToDouble(box -> box.modules() == null ? 0 : box.modules().number())
                .sum();
        if (sum != modules.number()) {
            complaints.add(
                    "pack.boxes",
                    "the boxes hold " + Math.round(sum) + " modules together and the pack has " + modules
                            + "; correct one of them");
        }
    }

    private void monitor(String path, Monitor monitor) {
        Module module = pack.module();
        for (int i = 0; i < monitor.watches().size(); i++) {
            WatchedBox box = monitor.watches().get(i);
            String at = path + "watches[" + i + "].";
            numbers(
                    at + "cell-groups",
                    box.cellGroups(),
                    "cell groups",
                    box.part(),
                    module == null ? null : module.cellGroups());
            numbers(
                    at + "temperature-points",
                    box.temperaturePoints(),
                    "temperature points",
                    box.part(),
                    module == null ? null : module.temperaturePoints());
        }
        limits(path, monitor.limits());
    }

    private void numbers(String path, @Nullable String text, String what, String box, @Nullable Quantity ofModule) {
        if (text == null) {
            return;
        }
        try {
            Numbers numbers = Numbers.of(text);
            Quantity modules = modulesIn.get(box);
            if (modules != null && ofModule != null) {
                double has = modules.number() * ofModule.number();
                if (numbers.all().last() > has) {
                    complaints.add(
                            path,
                            Quoted.of(box) + " has " + Math.round(has) + " " + what + ", and "
                                    + numbers.all().last() + " is watched");
                }
            }
        } catch (IllegalArgumentException malformed) {
            complaints.add(path, Quoted.of(text) + " " + malformed.getMessage());
        }
    }

    private void limits(String path, List<Protection> limits) {
        var seen = new HashSet<Watched>();
        for (int i = 0; i < limits.size(); i++) {
            Protection limit = limits.get(i);
            String at = path + "limits[" + i + "].";
            if (!seen.add(limit.on())) {
                complaints.add(at + "on", "`" + limit.on() + "` stands twice in one monitor");
            }
            Unit unit = limit.on().isVoltage() ? VOLT : CELSIUS;
            if (limit.at() != null && !limit.at().unit().measuresLike(unit)) {
                complaints.add(
                        at + "at", "`" + limit.at() + "` does not fit `" + limit.on() + "`; write it in " + unit);
            }
        }
    }
}
