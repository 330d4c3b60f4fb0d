package kerbfolio.car;

import java.util.List;
import java.util.stream.IntStream;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Load;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** The car as delivered with the load its owner declares: occupants and luggage, each at its place. */
public final class Laden {
    /** The whole car with its load. */
    public static final Formula TOTAL = Formula.of("m_l = m + sum(m_i)")
            .giving("mass with the declared load", "kg")
            .with("m", "mass of the car", "kg")
            .each("m_i", "mass carried", "kg")
            .from(Source.STATICS.clause("conservation of mass"))
            .build();

    /** Moments about the front axle. */
    public static final Formula REAR = Formula.of("m_l = m_R + sum(m_i*x_i)/L")
            .giving("rear axle with the declared load", "kg")
            .with("m_R", "rear axle", "kg")
            .each("m_i", "mass carried", "kg")
            .each("x_i", "place of it behind the front axle", "mm")
            .with("L", "wheelbase", "mm")
            .needs("L > 0*[m]")
            .from(Source.STATICS.clause("moments about the front axle"))
            .build();

    /** Moments about the rear axle. */
    public static final Formula FRONT = Formula.of("m_l = m_F + sum(m_i) - sum(m_i*x_i)/L")
            .giving("front axle with the declared load", "kg")
            .with("m_F", "front axle", "kg")
            .each("m_i", "mass carried", "kg")
            .each("x_i", "place of it behind the front axle", "mm")
            .with("L", "wheelbase", "mm")
            .needs("L > 0*[m]")
            .from(Source.STATICS.clause("moments about the rear axle"))
            .build();

    private final Working total;
    private final Working front;
    private final Working rear;

    Laden(Evidence evidence, Scales scales, Dimensions size, List<Load> load, @Nullable String by) {
        List<Term> masses = load.isEmpty() ? nothing("kg") : masses(evidence, load, by);
        List<Term> places = load.isEmpty() ? nothing("mm") : places(evidence, load, by);
        this.total =
                Working.fill(TOTAL).put("m", scales.total()).each("m_i", masses).work();
        this.front = Working.fill(FRONT)
                .put("m_F", scales.axle(Axle.FRONT))
                .each("m_i", masses)
                .each("x_i", places)
                .put("L", size.wheelbase())
                .work();
        this.rear = Working.fill(REAR)
                .put("m_R", scales.axle(Axle.REAR))
                .each("m_i", masses)
                .each("x_i", places)
                .put("L", size.wheelbase())
                .work();
    }

    public Working total() {
        return total;
    }

    public Working axle(Axle axle) {
        return axle == Axle.FRONT ? front : rear;
    }

    private static List<Term> masses(Evidence evidence, List<Load> load, @Nullable String by) {
        return IntStream.range(0, load.size())
                .mapToObj(i -> evidence.stated(
                        "vehicle.load[" + i + "].mass",
                        "mass of " + load.get(i).name(),
                        "kg",
                        load.get(i).mass(),
                        by))
                .toList();
    }

    private static List<Term> places(Evidence evidence, List<Load> load, @Nullable String by) {
        return IntStream.range(0, load.size())
                .mapToObj(i -> {
                    var position = load.get(i).position();
                    Quantity x = position == null ? null : position.x();
                    return evidence.stated(
                            "vehicle.load[" + i + "].position.x",
                            "place of " + load.get(i).name(),
                            "mm",
                            x,
                            by);
                })
                .toList();
    }

    private static List<Term> nothing(String unit) {
        return List.of(new Absent("vehicle.load", "load the owner declares", Unit.of(unit), Absent.UNRECORDED));
    }
}
