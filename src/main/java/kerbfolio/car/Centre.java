package kerbfolio.car;

import java.util.ArrayList;
import java.util.List;
import kerbfolio.formula.Basis;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.LoadedRadii;
import kerbfolio.job.Tilt;
import kerbfolio.job.TiltStep;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/** The centre of gravity of the car: along it, across it, and its height where one axle was raised on the scales. */
public final class Centre {
    /** Moments about the front axle. */
    public static final Formula ALONG = Formula.of("a = m_R*L/m")
            .giving("centre of gravity behind the front axle", "mm")
            .with("m_R", "rear axle", "kg")
            .with("L", "wheelbase", "mm")
            .with("m", "mass of the car", "kg")
            .needs("m > 0*[kg]")
            .from(Source.ISO_10392.clause("5, horizontal plane"))
            .build();

    /** Moments about the centre line; wheels of an axle stand half its track away. */
    public static final Formula ACROSS = Formula.of("y = (T_F*(m_RF - m_LF) + T_R*(m_RR - m_LR))/(2*m)")
            .giving("centre of gravity right of the centre line", "mm")
            .with("T_F", "front track", "mm")
            .with("T_R", "rear track", "mm")
            .with("m_LF", "left front wheel", "kg")
            .with("m_RF", "right front wheel", "kg")
            .with("m_LR", "left rear wheel", "kg")
            .with("m_RR", "right rear wheel", "kg")
            .with("m", "mass of the car", "kg")
            .needs("m > 0*[kg]")
            .from(Source.ISO_10392.clause("5, horizontal plane"))
            .build();

    /**
     * The angle of the body from the rise of the rear wheel centre. With unequal radii the line through the wheel centres
     * already leans when the car is level; equal radii give the familiar tan θ = H/√(L² − H²).
     */
    public static final Formula ANGLE = Formula.of(
                    "theta = atan((H + r_R - r_F)/sqrt(L^2 - H^2 - 2*H*(r_R - r_F))) - atan((r_R - r_F)/L)")
            .giving("angle of the body", "°")
            .with("H", "rise of the rear wheel centre", "mm")
            .with("L", "wheelbase", "mm")
            .with("r_F", "front loaded radius", "mm")
            .with("r_R", "rear loaded radius", "mm")
            .needs("H > 0*[m]")
            .needs("L > H")
            .from(Source.STATICS.clause("rotation of the body about the front wheel centre"))
            .build();

    /** With the rear raised, the weight that moves forward tells how high the centre of gravity sits. */
    public static final Formula HEIGHT = Formula.of("h = r_F*m_F'/m + r_R*(1 - m_F'/m) + L*(m_F' - m_F)/(m*tan(theta))")
            .giving("height of the centre of gravity", "mm")
            .with("r_F", "front loaded radius", "mm")
            .with("r_R", "rear loaded radius", "mm")
            .with("m_F'", "front axle, rear raised", "kg")
            .with("m_F", "front axle, level", "kg")
            .with("m", "mass of the car", "kg")
            .with("L", "wheelbase", "mm")
            .with("theta", "angle of the body", "°")
            .needs("theta > 0*[°]")
            .from(Source.ISO_10392.clause("6, axle lift"))
            .from(Source.STATICS.clause("moments about the front contact, radii unequal"))
            .build();

    /** The mean over the lift heights. */
    public static final Formula MEAN = Formula.of("h = sum(h_i)/n")
            .giving("height of the centre of gravity", "mm")
            .each("h_i", "height at each lift", "mm")
            .with("n", "number of lifts", "1")
            .from(Source.ISO_10392.clause("6, axle lift"))
            .build();

    /** Where no axle was raised, one lift stands with nothing recorded, so that what is missing can be asked for. */
    private static final Tilt NO_TILT =
            new Tilt(null, null, null, null, null, List.of(new TiltStep(null, null, null, null, null)), null);

    private final Scales scales;
    private final Dimensions size;
    private final List<Working> lifts;
    private final Working height;

    Centre(Evidence evidence, Scales scales, Dimensions size, @Nullable Tilt tilt) {
        this.scales = scales;
        this.size = size;
        this.lifts = lifts(evidence, tilt == null ? NO_TILT : tilt);
        this.height = Working.fill(MEAN)
                .each("h_i", lifts)
                .put(
                        "n",
                        Known.exact(
                                "weighings.tilt.steps",
                                "number of lifts",
                                Quantity.of(lifts.size(), Unit.ONE),
                                Basis.OBSERVED,
                                "counted in the record"))
                .work();
    }

    public Working along() {
        return along(scales, size);
    }

    static Working along(Scales scales, Dimensions size) {
        return Working.fill(ALONG)
                .named("centre of gravity behind the front axle " + scales.words())
                .put("m_R", scales.axle(Axle.REAR))
                .put("L", size.wheelbase())
                .put("m", scales.total())
                .work();
    }

    public Working across() {
        return across(scales, size);
    }

    static Working across(Scales scales, Dimensions size) {
        return Working.fill(ACROSS)
                .named("centre of gravity right of the centre line " + scales.words())
                .put("T_F", size.track(Axle.FRONT))
                .put("T_R", size.track(Axle.REAR))
                .put("m_LF", scales.corner(Corner.LEFT_FRONT))
                .put("m_RF", scales.corner(Corner.RIGHT_FRONT))
                .put("m_LR", scales.corner(Corner.LEFT_REAR))
                .put("m_RR", scales.corner(Corner.RIGHT_REAR))
                .put("m", scales.total())
                .work();
    }

    /** The height found at each lift, in the order recorded. */
    public List<Working> lifts() {
        return lifts;
    }

    /** The mean height; absent where no axle was raised. */
    public Working height() {
        return height;
    }

    private List<Working> lifts(Evidence evidence, Tilt tilt) {
        LoadedRadii radii = tilt.loadedRadius();
        Term front = length(
                evidence, tilt, "loaded-radius.front", "front loaded radius", radii == null ? null : radii.front());
        Term rear =
                length(evidence, tilt, "loaded-radius.rear", "rear loaded radius", radii == null ? null : radii.rear());
        var workings = new ArrayList<Working>();
        for (int i = 0; i < tilt.steps().size(); i++) {
            workings.add(lift(evidence, tilt, i, front, rear));
        }
        return List.copyOf(workings);
    }

    private Working lift(Evidence evidence, Tilt tilt, int i, Term front, Term rear) {
        TiltStep step = tilt.steps().get(i);
        String key = "steps[" + i + "].";
        String nth = "lift " + (i + 1);
        Term angle = step.angle() != null
                ? length(evidence, tilt, key + "angle", "angle of the body, " + nth, step.angle())
                : Working.fill(ANGLE)
                        .named("angle of the body, " + nth)
                        .put("H", length(evidence, tilt, key + "rise", "rise, " + nth, step.rise()))
                        .put("L", size.wheelbase())
                        .put("r_F", front)
                        .put("r_R", rear)
                        .work();
        Term raised = raised(evidence, tilt, step, key, nth);
        return Working.fill(HEIGHT)
                .named("height of the centre of gravity, " + nth)
                .put("r_F", front)
                .put("r_R", rear)
                .put("m_F'", raised)
                .put("m_F", scales.axle(Axle.FRONT))
                .put("m", scales.total())
                .put("L", size.wheelbase())
                .put("theta", angle)
                .work();
    }

    /** Two wheels on two scales are two readings; their errors of each single reading do not stand for one another. */
    private static Term raised(Evidence evidence, Tilt tilt, TiltStep step, String key, String nth) {
        if (step.leftFront() == null && step.rightFront() == null) {
            return mass(evidence, tilt, key + "front-axle", "front axle, " + nth, step.frontAxle());
        }
        return Working.fill(Scales.AXLE)
                .named("front axle, " + nth)
                .put("m_L", mass(evidence, tilt, key + "left-front", "left front, " + nth, step.leftFront()))
                .put("m_R", mass(evidence, tilt, key + "right-front", "right front, " + nth, step.rightFront()))
                .work();
    }

    private static Term mass(Evidence evidence, Tilt tilt, String key, String name, @Nullable Quantity quantity) {
        return evidence.measured("weighings.tilt." + key, name, "kg", quantity, tilt.instrument(), tilt.date());
    }

    private static Term length(Evidence evidence, Tilt tilt, String key, String name, @Nullable Quantity quantity) {
        boolean angle = key.endsWith("angle");
        return evidence.measured(
                "weighings.tilt." + key,
                name,
                angle ? "°" : "mm",
                quantity,
                angle ? tilt.angleInstrument() : tilt.lengthInstrument(),
                tilt.date());
    }
}
