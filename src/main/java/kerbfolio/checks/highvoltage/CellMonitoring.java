package kerbfolio.checks.highvoltage;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Monitor;
import kerbfolio.job.Numbers;
import kerbfolio.job.Role;
import kerbfolio.job.WatchedBox;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** A cell group nobody watches is overcharged in silence. */
@Sheet(Sheets.BATTERY)
public final class CellMonitoring implements Check {
    static final Formula UNWATCHED = Formula.of("u = N_b*k - w")
            .giving("left unwatched", "1")
            .with("N_b", "modules in the box", "1")
            .with("k", "cell groups or temperature points of a module", "1")
            .with("w", "watched", "1")
            .from(Source.OWN_RULE.clause("a count"))
            .build();

    @Override
    public String question() {
        return "Does some battery monitor watch every cell group and every temperature point of each box?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var boxes = new LinkedHashSet<String>();
        car.circuit().parts(Role.BATTERY).forEach(part -> boxes.add(part.id()));
        car.pack().section().ifPresent(pack -> pack.boxes().forEach(box -> boxes.add(box.part())));
        if (boxes.isEmpty()) {
            boxes.add("the traction battery");
        }
        return boxes.stream()
                .flatMap(box -> Stream.of(cellGroups(car, box, limits), temperaturePoints(car, box, limits)));
    }

    private static Finding cellGroups(Car car, String box, Limits limits) {
        return finding(
                car,
                box,
                "cell-groups",
                "cell groups",
                car.pack().plate().groupsInModule(),
                WatchedBox::cellGroups,
                limits);
    }

    private static Finding temperaturePoints(Car car, String box, Limits limits) {
        return finding(
                car,
                box,
                "temperature-points",
                "temperature points",
                car.pack().plate().temperaturePointsInModule(),
                WatchedBox::temperaturePoints,
                limits);
    }

    private static Finding finding(
            Car car,
            String box,
            String key,
            String what,
            Term ofModule,
            Function<WatchedBox, @Nullable String> numbers,
            Limits limits) {
        Term modules = car.pack().plate().modulesIn(box);
        double has = modules.amount().isPresent() && ofModule.amount().isPresent()
                ? modules.amount().get().si() * ofModule.amount().get().si()
                : 0;
        Working unwatched = Working.fill(UNWATCHED)
                .named(what + " of " + box + " nobody watches")
                .put("N_b", modules)
                .put("k", ofModule)
                .put("w", watched(car, box, key, what, (int) Math.round(has), numbers))
                .work();
        return Finding.judged(what + " of " + box, unwatched, limits, "cell-monitoring");
    }

    /** The numbers some monitor watches, each counted once; a box no monitor names is watched by none. */
    private static Term watched(
            Car car, String box, String key, String what, int has, Function<WatchedBox, @Nullable String> numbers) {
        List<Monitor> monitors =
                car.pack().section().map(pack -> pack.monitors()).orElse(List.of());
        if (monitors.isEmpty()) {
            return Absent.unrecorded("pack.monitors", "which " + what + " of " + box + " a monitor watches", "1");
        }
        Numbers watched = Numbers.none();
        for (int i = 0; i < monitors.size(); i++) {
            List<WatchedBox> watches = monitors.get(i).watches();
            for (int k = 0; k < watches.size(); k++) {
                String text = numbers.apply(watches.get(k));
                boolean isNamed = watches.get(k).part().equals(box);
                if (isNamed && text == null) {
                    return Absent.unrecorded(
                            "pack.monitors[" + i + "].watches[" + k + "]." + key,
                            "which " + what + " of " + box + " "
                                    + monitors.get(i).part() + " watches",
                            "1");
                }
                watched = isNamed && text != null ? watched.with(Numbers.of(text)) : watched;
            }
        }
        return Evidence.solved(
                "pack.monitors",
                what + " of " + box + " watched",
                watched.all().size(),
                "1",
                "watched: " + watched + "; nobody watches: " + watched.missingUpTo(has));
    }
}
