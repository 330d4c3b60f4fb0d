package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.check.Examination;
import kerbfolio.dossier.Dossier;

/** Where the centre of gravity was and is: along the car, across it, and how high, as far as each is known. */
final class CentreMovement implements Figure {
    private static final double TITLE = 8;
    private static final double GROUND = 124;
    private static final double ROW = 19;
    private static final double FOOT = 40;
    private static final double LABEL = 4;
    private static final double SEEN = 0.6;
    /** Nearer to the centre line than this, a line of its own would only blur it [pt]. */
    private static final double APART = 3;

    private final List<State> states;
    private final Value height;
    private final Elevation elevation;

    private CentreMovement(Dossier dossier) {
        Car car = dossier.car();
        var units = dossier.units();
        states = Stream.of(
                        new State(
                                car.received().words() + (car.received().isStated() ? " (stated)" : ""),
                                Value.of(car.centreAlongReceived(), units),
                                Value.of(car.centreAcrossReceived(), units),
                                share(dossier, car.received().words()),
                                false),
                        new State(
                                car.delivered().words(),
                                Value.of(car.centre().along(), units),
                                Value.of(car.centre().across(), units),
                                share(dossier, car.delivered().words()),
                                true))
                .filter(state -> state.along().isKnown())
                .toList();
        height = Value.of(car.centre().height(), units);
        boolean hasAcross = states.stream().anyMatch(state -> state.across().isKnown());
        elevation = new Elevation(
                Value.of(car.size().wheelbase(), units).si(),
                Math.max(
                        Value.of(car.size().track(Axle.FRONT), units).si(),
                        Value.of(car.size().track(Axle.REAR), units).si()),
                GROUND,
                hasAcross);
    }

    /** The centre of gravity in one state of the car, and the share of the mass in front. */
    private record State(String when, Value along, Value across, Optional<Value> share, boolean isAfter) {
        String words() {
            return when + ": " + along.text() + " behind the front axle"
                    + (across.isKnown() ? ", " + across.besideCentreLine() : "")
                    + share.map(s -> ", " + s.text() + " of the mass on the front axle")
                            .orElse("");
        }
    }

    private static Optional<Value> share(Dossier dossier, String when) {
        return FindingRows.of(dossier, "front-share")
                .map(Examination.Row::finding)
                .filter(finding -> finding.subject().equals(when))
                .map(finding -> Value.of(finding.result(), dossier.units()))
                .filter(Value::isKnown)
                .findFirst();
    }

    static Optional<CentreMovement> of(Dossier dossier) {
        var figure = new CentreMovement(dossier);
        return figure.states.isEmpty() ? Optional.empty() : Optional.of(figure);
    }

    @Override
    public String id() {
        return "centre-movement";
    }

    @Override
    public String caption() {
        State last = states.get(states.size() - 1);
        if (states.size() == 1) {
            return "The centre of gravity lies " + last.along().text() + " behind the front axle " + last.when() + ".";
        }
        State first = states.get(0);
        String shares = first.share()
                .flatMap(before -> last.share()
                        .map(after -> "; the front axle carried " + before.text() + " of the mass and carries "
                                + after.text()))
                .orElse("");
        return "The centre of gravity " + moved(first.along(), last.along()) + ": "
                + first.along().text() + " behind the front axle " + first.when() + ", "
                + last.along().text() + " " + last.when() + shares + ".";
    }

    private static String moved(Value before, Value after) {
        double way = after.si() - before.si();
        if (Math.abs(way) <= before.reach() + after.reach()) {
            return "stayed where it was within its uncertainty";
        }
        return way > 0 ? "moved rearward" : "moved forward";
    }

    @Override
    public String alternative() {
        return "Centre of gravity "
                + states.stream().map(State::words).collect(Collectors.joining("; "))
                + (height.isKnown() ? "; height as delivered: " + height.text() + " above the ground" : "") + ".";
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return GROUND + ROW * states.size() + FOOT;
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        elevation.side(pen);
        pen.centred("from its left side, front to the left", elevation.along(0.5), TITLE, Type.NOTE);
        double y = GROUND + 4;
        for (State state : states) {
            y += ROW;
            along(pen, state, y);
        }
        if (elevation.hasBack()) {
            elevation.back(pen);
            pen.centred("from behind", elevation.middle(), TITLE, Type.NOTE);
            across(pen);
        }
        foot(pen);
    }

    private void along(Pen pen, State state, double y) {
        double axle = elevation.along(0);
        double centre = elevation.at(state.along().si());
        double reach = elevation.scaled(state.along().reach());
        boolean raised = state.isAfter() && height.isKnown();
        double top = raised ? elevation.above(height.si()) : elevation.roof() + 5;
        pen.line(axle, GROUND - 2, axle, y + 3, Line.HAIR, Pen.GREY);
        pen.line(centre, y, centre, top, state.isAfter() ? Line.THIN : Line.DASHED, Pen.INK);
        pen.left(state.when(), LABEL, y + 2.6, state.isAfter() ? Type.STRONG : Type.TEXT);
        pen.dimension(axle, y, centre, y);
        Type type = state.isAfter() ? Type.STRONG : Type.TEXT;
        double words = pen.width(state.along().text(), type);
        if (centre - axle > words + 20) {
            pen.over(state.along().text(), (axle + centre) / 2, y + 2.8, type);
        } else {
            pen.left(state.along().text(), beyond(centre) + reach + 12, y + 2.8, type);
        }
        pen.centre(centre, y, state.isAfter());
        whisker(pen, centre, reach, y - 8.5);
        if (raised) {
            high(pen, centre, reach);
        }
    }

    /** An uncertainty too small to be seen would only be a blot. */
    private static void whisker(Pen pen, double x, double reach, double y) {
        if (reach >= SEEN) {
            pen.whisker(x - reach, x + reach, y);
        }
    }

    /** To the right of both centres, whose lines would run through the words. */
    private double beyond(double centre) {
        return states.stream()
                .mapToDouble(state -> elevation.at(state.along().si()))
                .reduce(Math.max(centre, elevation.along(0)), Math::max);
    }

    private void high(Pen pen, double centre, double reach) {
        double y = elevation.above(height.si());
        double up = elevation.scaled(height.reach());
        boolean right = states.size() < 2
                || states.get(0).along().si() <= states.get(1).along().si();
        double x = centre + (right ? 12 : -12);
        pen.dimension(x, GROUND, x, y);
        pen.line(centre, y, x + (right ? 3 : -3), y, Line.HAIR, Pen.INK);
        pen.upright(centre, y - up, y + up);
        whisker(pen, centre, reach, y);
        pen.centre(centre, y, true);
        String words = height.text() + " high";
        double half = pen.width(words, Type.STRONG) / 2;
        pen.over(words, centre + (right ? 10 + half : -10 - half), y - 6, Type.STRONG);
    }

    private void across(Pen pen) {
        double y = GROUND + 4;
        for (State state : states) {
            y += ROW;
            if (state.across().isKnown()) {
                double x = elevation.middle() + elevation.scaled(state.across().si());
                double reach = elevation.scaled(state.across().reach());
                boolean raised = state.isAfter() && height.isKnown();
                if (raised || Math.abs(x - elevation.middle()) > APART) {
                    double top = raised ? elevation.above(height.si()) : elevation.roof() + 5;
                    pen.line(x, y, x, top, state.isAfter() ? Line.THIN : Line.DASHED, Pen.INK);
                }
                if (raised) {
                    pen.centre(x, elevation.above(height.si()), true);
                }
                whisker(pen, x, reach, y - 8.5);
                pen.centre(x, y, state.isAfter());
                pen.right(
                        state.across().sideways(),
                        Math.min(x, elevation.middle()) - reach - 10,
                        y + 2.8,
                        state.isAfter() ? Type.STRONG : Type.TEXT);
            }
        }
    }

    private void foot(Pen pen) {
        double y = height() - 16;
        String shares = states.stream()
                .flatMap(state -> state.share().map(s -> s.text() + " " + state.when()).stream())
                .collect(Collectors.joining("; "));
        if (!shares.isEmpty()) {
            pen.left("share on the front axle: ", LABEL, y, Type.TEXT);
            pen.left(shares, LABEL + pen.width("share on the front axle: ", Type.TEXT), y, Type.STRONG);
        }
        String drawn = height.isKnown() ? "" : "height not measured; ";
        pen.left(
                drawn + "thin bars: expanded uncertainty, k = 2; lengths to scale, the outline not",
                LABEL,
                y + 12,
                Type.NOTE);
    }
}
