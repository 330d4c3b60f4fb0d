package kerbfolio.figure;

import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.dossier.Dossier;

/** A plain car from above, front to the left, drawn to the wheelbase and track that are recorded. */
final class Plan {
    /** Room across the car [pt]. */
    static final double WIDTH = 104;

    private static final double MIDDLE = Pen.WIDTH / 2;
    private static final double LONGEST = 168;
    private static final double WIDEST = 82;
    /** How much larger a plan of the parts is drawn than one of the wheels. */
    private static final double ENLARGED = 1.55;

    /** Proportions of the outline, which is nobody's car. */
    private static final double USUAL_WHEELBASE = 2.5;

    private static final double USUAL_TRACK = 0.55;
    private static final double NOSE = 0.30;
    private static final double TAIL = 0.34;
    private static final double FLANK = 0.60;

    private final double middle;
    private final double scale;
    private final double wheelbase;
    private final double frontTrack;
    private final double rearTrack;
    private final String note;
    private final Mark before;
    private final Mark after;

    /** Where the centre of gravity lies: along the car, and across it if known. */
    private record Mark(Value along, Value across, boolean isAfter) {}

    private final boolean hasCentres;

    private Plan(Dossier dossier, double middle, double enlarged) {
        Car car = dossier.car();
        Value length = Value.of(car.size().wheelbase(), dossier.units());
        Value front = Value.of(car.size().track(Axle.FRONT), dossier.units());
        Value rear = Value.of(car.size().track(Axle.REAR), dossier.units());
        double wider = Math.max(front.si(), rear.si());
        this.middle = middle;
        hasCentres = enlarged == 1;
        wheelbase = length.si() > 0 ? length.si() : wider > 0 ? wider / USUAL_TRACK : USUAL_WHEELBASE;
        frontTrack = front.si() > 0 ? front.si() : wider > 0 ? wider : USUAL_TRACK * wheelbase;
        rearTrack = rear.si() > 0 ? rear.si() : frontTrack;
        scale = enlarged * Math.min(LONGEST / wheelbase, WIDEST / Math.max(frontTrack, rearTrack));
        note = length.si() <= 0
                ? "not to scale"
                : wider <= 0
                        ? "wheelbase to scale, the rest schematic"
                        : "wheelbase and track to scale, outline schematic";
        before = new Mark(
                Value.of(car.centreAlongReceived(), dossier.units()),
                Value.of(car.centreAcrossReceived(), dossier.units()),
                false);
        after = new Mark(
                Value.of(car.centre().along(), dossier.units()),
                Value.of(car.centre().across(), dossier.units()),
                true);
    }

    static Plan of(Dossier dossier, double top) {
        return new Plan(dossier, top + WIDTH / 2, 1);
    }

    /** A larger one without centres of gravity, for what sits in the car. */
    static Plan large(Dossier dossier, double top) {
        return new Plan(dossier, top + ENLARGED * WIDTH / 2, ENLARGED);
    }

    /** Height of the larger one. */
    static double tall() {
        return ENLARGED * WIDTH;
    }

    /** In m; a usual one where none is recorded. */
    double wheelbase() {
        return wheelbase;
    }

    /** A place behind the front axle; one far outside the axles is a mistake the figure must not run away with. */
    double along(double metres) {
        return axle(Axle.FRONT) + Math.max(-NOSE, Math.min(1 + TAIL, metres / wheelbase)) * wheelbase * scale;
    }

    /** A place beside the centre line, right above left. */
    double across(double metres) {
        double most = FLANK * Math.max(frontTrack, rearTrack);
        return middle - Math.max(-most, Math.min(most, metres)) * scale;
    }

    /** Where an axle stands along the figure. */
    double axle(Axle axle) {
        return MIDDLE + (axle == Axle.FRONT ? -0.5 : 0.5) * wheelbase * scale;
    }

    /** Upper edge of the wheels of an axle. */
    double top(Axle axle) {
        return middle - half(axle) - tyre() / 2;
    }

    /** Lower edge of the wheels of an axle. */
    double bottom(Axle axle) {
        return middle + half(axle) + tyre() / 2;
    }

    private double half(Axle axle) {
        return (axle == Axle.FRONT ? frontTrack : rearTrack) * scale / 2;
    }

    private double tyre() {
        return Math.min(frontTrack, rearTrack) * scale * 0.13;
    }

    boolean hasCentre(boolean ofDelivered) {
        return (ofDelivered ? after : before).along().isKnown();
    }

    String words() {
        return words("as received", before) + words("as delivered", after);
    }

    private static String words(String when, Mark mark) {
        if (!mark.along().isKnown()) {
            return "";
        }
        String across = mark.across().isKnown() ? ", " + mark.across().besideCentreLine() : "";
        return " Centre of gravity " + when + ": " + mark.along().text() + " behind the front axle" + across + ".";
    }

    String note() {
        return "front to the left; left as seen from the driver's seat; " + note;
    }

    void draw(Pen pen) {
        double front = axle(Axle.FRONT);
        double rear = axle(Axle.REAR);
        double length = rear - front;
        double flank = FLANK * 2 * Math.max(half(Axle.FRONT), half(Axle.REAR));
        body(pen, front - NOSE * length, rear + TAIL * length, flank);
        pen.line(front - NOSE * length - 8, middle, rear + TAIL * length + 8, middle, Line.CENTRE, Pen.GREY);
        for (Axle axle : Axle.values()) {
            pen.line(axle(axle), middle - half(axle), axle(axle), middle + half(axle), Line.THIN, Pen.GREY);
            wheel(pen, axle(axle), middle - half(axle));
            wheel(pen, axle(axle), middle + half(axle));
        }
        if (hasCentres) {
            double bonnet = front + 0.12 * length;
            pen.centred("right", bonnet, middle - half(Axle.FRONT) + tyre() / 2 + 10, Type.NOTE);
            pen.centred("left", bonnet, middle + half(Axle.FRONT) - tyre() / 2 - 5, Type.NOTE);
            centres(pen);
        } else {
            double nose = front - NOSE * length;
            pen.right("right", nose, middle - half(Axle.FRONT), Type.LABEL);
            pen.right("left", nose, middle + half(Axle.FRONT), Type.LABEL);
        }
    }

    private void body(Pen pen, double nose, double tail, double flank) {
        double round = 0.55 * flank;
        var body = new Path2D.Double();
        body.moveTo(nose + round, middle - flank * 0.94);
        body.curveTo(
                nose + 2.2 * round,
                middle - flank,
                nose + 2.4 * round,
                middle - flank,
                nose + 3 * round,
                middle - flank);
        body.lineTo(tail - round, middle - flank);
        body.quadTo(tail, middle - flank, tail, middle - flank + round);
        body.lineTo(tail, middle + flank - round);
        body.quadTo(tail, middle + flank, tail - round, middle + flank);
        body.lineTo(nose + 3 * round, middle + flank);
        body.curveTo(
                nose + 2.4 * round,
                middle + flank,
                nose + 2.2 * round,
                middle + flank,
                nose + round,
                middle + flank * 0.94);
        body.quadTo(nose, middle + 0.8 * flank, nose, middle);
        body.quadTo(nose, middle - 0.8 * flank, nose + round, middle - flank * 0.94);
        body.closePath();
        pen.outline(body, Line.FIRM, Pen.GREY);
        cabin(pen, nose + 0.33 * (tail - nose), tail - 0.05 * (tail - nose), 0.72 * flank);
    }

    private void cabin(Pen pen, double front, double rear, double half) {
        var cabin = new Path2D.Double();
        cabin.moveTo(front + 6, middle - half);
        cabin.quadTo(front - 6, middle, front + 6, middle + half);
        cabin.lineTo(front + 20, middle + 0.9 * half);
        cabin.quadTo(front + 11, middle, front + 20, middle - 0.9 * half);
        cabin.closePath();
        cabin.moveTo(rear, middle - half);
        cabin.quadTo(rear + 6, middle, rear, middle + half);
        cabin.lineTo(rear - 9, middle + 0.9 * half);
        cabin.quadTo(rear - 4, middle, rear - 9, middle - 0.9 * half);
        cabin.closePath();
        pen.outline(cabin, Line.HAIR, Pen.GREY);
    }

    private void wheel(Pen pen, double x, double y) {
        double length = 0.24 * wheelbase * scale;
        var wheel = new RoundRectangle2D.Double(x - length / 2, y - tyre() / 2, length, tyre(), 3, 3);
        pen.fill(wheel, Pen.PALE);
        pen.outline(wheel, Line.THIN, Pen.INK);
    }

    private void centres(Pen pen) {
        for (Mark mark : new Mark[] {before, after}) {
            if (mark.along().isKnown() && !mark.across().isKnown()) {
                pen.line(
                        along(mark.along().si()),
                        middle - half(Axle.FRONT) / 2,
                        along(mark.along().si()),
                        middle + half(Axle.FRONT) / 2,
                        mark.isAfter() ? Line.FIRM : Line.DASHED,
                        Pen.INK);
            }
        }
        for (Mark mark : new Mark[] {before, after}) {
            if (mark.along().isKnown()) {
                pen.centre(along(mark.along().si()), middle - mark.across().si() * scale, mark.isAfter());
            }
        }
    }
}
