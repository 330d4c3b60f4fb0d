package kerbfolio.figure;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;

/** A plain car from its left side, front to the left, and from behind, both to one scale. */
final class Elevation {
    private static final double SIDE_MIDDLE = 178;
    private static final double BACK_MIDDLE = 424;
    private static final double LONGEST = 196;
    private static final double WIDEST = 106;
    /** Proportions of the outline, in wheelbases; it is nobody's car. */
    private static final double ROOF = 0.54;

    private static final double WHEEL = 0.115;
    private static final double NOSE = -0.29;
    private static final double TAIL = 1.31;

    private final double wheelbase;
    private final double track;
    private final double ground;
    private final double scale;
    private final double front;
    private final boolean hasBack;

    /**
     * @param wheelbase in m, above 0
     * @param track in m; 0 if not known
     * @param ground where the ground lies [pt]
     * @param hasBack whether the car is drawn from behind too
     */
    Elevation(double wheelbase, double track, double ground, boolean hasBack) {
        this(wheelbase, track, ground, hasBack, LONGEST);
    }

    /** From its side alone, the wheelbase drawn this long [pt]. */
    static Elevation side(double wheelbase, double ground, double longest) {
        return new Elevation(wheelbase, 0, ground, false, longest);
    }

    private Elevation(double wheelbase, double track, double ground, boolean hasBack, double longest) {
        this.wheelbase = wheelbase;
        this.track = track;
        this.ground = ground;
        this.hasBack = hasBack;
        scale = hasBack ? Math.min(longest / wheelbase, WIDEST / track) : longest / wheelbase;
        front = (hasBack ? SIDE_MIDDLE : Pen.WIDTH / 2) - wheelbase * scale / 2;
    }

    boolean hasBack() {
        return hasBack;
    }

    /** Centre line of the view from behind. */
    double middle() {
        return BACK_MIDDLE;
    }

    double scaled(double metres) {
        return metres * scale;
    }

    /** A place along the car, in wheelbases. */
    double along(double share) {
        return front + share * wheelbase * scale;
    }

    /** A place behind the front axle; one far outside the axles is a mistake the figure must not run away with. */
    double at(double metres) {
        return along(Math.max(NOSE, Math.min(TAIL, metres / wheelbase)));
    }

    /** A height above the ground, within the figure. */
    double above(double metres) {
        return ground - Math.max(0, Math.min(ROOF * wheelbase * scale, metres * scale));
    }

    double roof() {
        return up(ROOF);
    }

    private double up(double share) {
        return ground - share * wheelbase * scale;
    }

    void side(Pen pen) {
        var body = new Path2D.Double();
        body.moveTo(along(NOSE), up(0.10));
        body.lineTo(along(NOSE), up(0.24));
        body.quadTo(along(NOSE), up(0.31), along(-0.18), up(0.32));
        body.lineTo(along(0.20), up(0.355));
        body.lineTo(along(0.40), up(0.52));
        body.quadTo(along(0.43), up(ROOF), along(0.50), up(ROOF));
        body.lineTo(along(1.06), up(0.525));
        body.quadTo(along(1.14), up(0.52), along(1.26), up(0.36));
        body.quadTo(along(TAIL), up(0.33), along(TAIL), up(0.22));
        body.lineTo(along(TAIL), up(0.10));
        body.closePath();
        pen.outline(body, Line.FIRM, Pen.GREY);
        pen.line(along(0.20), up(0.355), along(1.26), up(0.36), Line.HAIR, Pen.GREY);
        pen.line(along(NOSE) - 8, ground, along(TAIL) + 8, ground, Line.THIN, Pen.INK);
        wheel(pen, along(0));
        wheel(pen, along(1));
    }

    private void wheel(Pen pen, double x) {
        double radius = WHEEL * wheelbase * scale;
        var tyre = new Ellipse2D.Double(x - radius, ground - 2 * radius, 2 * radius, 2 * radius);
        pen.fill(tyre, Pen.PALE);
        pen.outline(tyre, Line.THIN, Pen.INK);
        pen.line(x - 3, ground - radius, x + 3, ground - radius, Line.HAIR, Pen.INK);
        pen.line(x, ground - radius - 3, x, ground - radius + 3, Line.HAIR, Pen.INK);
    }

    void back(Pen pen) {
        double half = track * scale / 2;
        double tyre = 0.075 * wheelbase * scale;
        double flank = half + tyre * 0.7;
        for (int side = -1; side <= 1; side += 2) {
            var wheel = new RoundRectangle2D.Double(
                    BACK_MIDDLE + side * half - tyre / 2, up(2 * WHEEL), tyre, ground - up(2 * WHEEL), 3, 3);
            pen.fill(wheel, Pen.PALE);
            pen.outline(wheel, Line.THIN, Pen.INK);
        }
        var body = new Path2D.Double();
        body.moveTo(BACK_MIDDLE - flank, up(0.10));
        body.lineTo(BACK_MIDDLE - flank, up(0.34));
        body.quadTo(BACK_MIDDLE - 0.86 * flank, up(ROOF), BACK_MIDDLE - 0.66 * flank, up(ROOF));
        body.lineTo(BACK_MIDDLE + 0.66 * flank, up(ROOF));
        body.quadTo(BACK_MIDDLE + 0.86 * flank, up(ROOF), BACK_MIDDLE + flank, up(0.34));
        body.lineTo(BACK_MIDDLE + flank, up(0.10));
        body.closePath();
        pen.outline(body, Line.FIRM, Pen.GREY);
        pen.line(BACK_MIDDLE, roof() - 6, BACK_MIDDLE, ground + 6, Line.CENTRE, Pen.GREY);
        pen.line(BACK_MIDDLE - flank - 6, ground, BACK_MIDDLE + flank + 6, ground, Line.THIN, Pen.INK);
        pen.right("left", BACK_MIDDLE - half + tyre, ground + 9, Type.NOTE);
        pen.left("right", BACK_MIDDLE + half - tyre, ground + 9, Type.NOTE);
    }
}
