package kerbfolio.car;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.CurvePoint;
import kerbfolio.job.Fuse;
import kerbfolio.job.Part;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** The ratings of a fuse as terms. */
public final class FusePlate {
    static final Formula CONTINUOUS = Formula.of("I_f = k*I_n")
            .giving("current the fuse carries without end", "A")
            .with("k", "share of its rated current it carries where it sits", "%")
            .with("I_n", "rated current", "A")
            .from(Source.CIRCUITS.clause("share of a rating"))
            .build();

    private static final Fuse BLANK = new Fuse(null, null, null, null, null, null, null, null, List.of());

    private final Evidence evidence;
    private final Part part;
    private final Fuse fuse;

    FusePlate(Evidence evidence, Part part) {
        this.evidence = evidence;
        this.part = part;
        this.fuse = part.fuse() == null ? BLANK : part.fuse();
    }

    /** An alternating current passes zero a hundred times a second; a direct one does not, and burns on. */
    public Term dcVoltage() {
        if (fuse.dcVoltage() == null && fuse.acVoltage() != null) {
            return new Absent(
                    path("dc-voltage"),
                    "rated direct voltage of " + part.title(),
                    Unit.of("V"),
                    "only an alternating rating is recorded, " + fuse.acVoltage());
        }
        return rating("dc-voltage", "rated direct voltage", "V", Fuse::dcVoltage);
    }

    public Term current() {
        return rating("current", "rated current", "A", Fuse::current);
    }

    /** Current it carries without end where it sits. */
    public Working continuousCurrent() {
        return Working.fill(CONTINUOUS)
                .named("current " + part.title() + " carries without end")
                .put("k", rating("derate", "share carried without end", "%", Fuse::derate))
                .put("I_n", current())
                .work();
    }

    public Term breakingCapacity() {
        return rating("breaking-capacity", "breaking capacity", "kA", Fuse::breakingCapacity);
    }

    public Term minimumBreaking() {
        return rating("minimum-breaking", "least breaking current", "A", Fuse::minimumBreaking);
    }

    public Term letThrough() {
        return rating("let-through", "let-through", "A²·s", Fuse::letThrough);
    }

    /** Currents its maker marked on the curve, as far as it melts within a time. */
    public List<Term> markedCurrents(Term longest) {
        double most = longest.amount().map(amount -> amount.si()).orElse(0.0);
        return fuse.curve().stream()
                .filter(point -> si(point.current()) > 0 && si(point.time()) > 0 && si(point.time()) <= most)
                .<Term>map(point -> Evidence.solved(
                        path("curve"),
                        "short-circuit current at a point of the curve of " + part.title(),
                        si(point.current()),
                        "A",
                        "a point its maker marks"))
                .toList();
    }

    /** Time until it melts at a current, from its curve, straight between points on logarithmic paper. */
    public Term meltingTime(Term current) {
        String name = "time until " + part.title() + " melts";
        Unit second = Unit.of("s");
        if (fuse.curve().stream().allMatch(point -> point.current() == null || point.time() == null)) {
            return Absent.unrecorded(path("curve"), "time-current curve of " + part.title(), "s");
        }
        if (current.amount().isEmpty()) {
            return new Absent(path("curve"), name, second, "the current is not known: " + current.origin());
        }
        double at = current.amount().get().si();
        double time = time(at);
        return Double.isNaN(time)
                ? new Absent(path("curve"), name, second, "the current lies below the points of its curve")
                : Evidence.solved(
                        path("curve"), name, time, "s", "from its time-current curve, without the arc that follows");
    }

    /** Seconds at a current; beyond the last point its time holds, before the first nothing does. */
    private double time(double at) {
        List<CurvePoint> points = fuse.curve().stream()
                .filter(point -> si(point.current()) > 0 && si(point.time()) > 0)
                .sorted(Comparator.comparingDouble(point -> si(point.current())))
                .toList();
        double time = Double.NaN;
        for (int i = 0; i < points.size() && si(points.get(i).current()) <= at; i++) {
            double from = si(points.get(i).current());
            time = si(points.get(i).time());
            if (i + 1 < points.size() && si(points.get(i + 1).current()) > at) {
                double share =
                        Math.log(at / from) / Math.log(si(points.get(i + 1).current()) / from);
                time *= Math.pow(si(points.get(i + 1).time()) / time, share);
            }
        }
        return time;
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }

    private String path(String key) {
        return "parts[" + part.id() + "].fuse." + key;
    }

    private Term rating(String key, String name, String unit, Function<Fuse, @Nullable Quantity> of) {
        return evidence.stated(path(key), name + " of " + part.title(), unit, of.apply(fuse), fuse.from());
    }
}
