package kerbfolio.figure;

import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.car.Terminal;
import kerbfolio.figure.Stand.Look;
import kerbfolio.figure.Stand.Point;
import kerbfolio.figure.Wires.Wire;
import kerbfolio.job.Link;

/** Puts parts, frames and wires on the canvas as they lie on the grid. */
final class CircuitSheet {
    /** Grid steps across and down [pt]. */
    static final double STEP = 6;

    static final double ROW = 9;
    private static final double DOT = 1.6;

    private final Pen pen;
    private final Circuit circuit;
    private final CircuitGrid grid;
    private final Wires wires;
    private final StillLive live;

    CircuitSheet(Pen pen, Circuit circuit, CircuitGrid grid, Wires wires, StillLive live) {
        this.pen = pen;
        this.circuit = circuit;
        this.grid = grid;
        this.wires = wires;
        this.live = live;
    }

    void draw() {
        grid.frames().forEach(this::frame);
        grid.stands().stream().filter(stand -> stand.look() == Look.RAILS).forEach(this::rails);
        wires.wires().forEach(this::wire);
        dots();
        grid.stands().forEach(this::stand);
        wires.wires().forEach(this::label);
    }

    private static double across(double x) {
        return 1 + STEP * x;
    }

    private static double down(double y) {
        return ROW / 2 + ROW * y;
    }

    private static Rectangle2D room(int left, int top, int right, int bottom) {
        return new Rectangle2D.Double(
                across(left), down(top) - ROW / 2, STEP * (right - left), ROW * (bottom - top + 1));
    }

    /** A box of the car; where something stands between its parts that is not in it, the outline goes round that. */
    private void frame(Frame frame) {
        var outline = new Area(room(frame.left(), frame.top(), frame.right(), frame.bottom()));
        for (Stand stand : frame.strangers(grid.stands())) {
            outline.subtract(new Area(
                    room(stand.x() - 1, stand.y(), Math.max(frame.right(), stand.right() + 1), stand.bottom())));
        }
        pen.outline(outline, Line.CENTRE, Pen.GREY);
        double x = across(frame.left()) + 4;
        double most = Math.max(STEP * Math.max(frame.title(), frame.right() - frame.left()), 0) - 4;
        pen.left(
                pen.fitted(frame.part().title(), Math.min(most, Pen.WIDTH - x), Type.LABEL),
                x,
                down(frame.top()) - ROW / 2 + 8,
                Type.LABEL);
    }

    private void rails(Stand stand) {
        for (String pole : List.of("+", "\u2212")) {
            boolean isPlus = pole.equals("+");
            double x = across(stand.x() + (isPlus ? 0 : 2));
            Terminal rail = isPlus
                    ? Terminal.plus(stand.part().id())
                    : Terminal.minus(stand.part().id());
            boolean isLive = circuit.bonds().stream()
                    .filter(bond -> bond.kind() == Bond.Kind.CABLE)
                    .filter(bond -> bond.from().equals(rail) || bond.to().equals(rail))
                    .anyMatch(live::is);
            pen.line(x, down(stand.y()), x, down(stand.bottom()), isLive ? Line.LIVE : Line.FIRM, Pen.INK);
            pen.centred(pole, x, down(stand.y()) - 2, Type.STRONG);
        }
    }

    private void wire(Wire wire) {
        var path = new Path2D.Double();
        Point first = wire.points().get(0);
        path.moveTo(across(first.x()), down(first.y()));
        wire.points().forEach(point -> path.lineTo(across(point.x()), down(point.y())));
        pen.outline(path, live.is(wire.bond()) ? Line.LIVE : Line.THIN, Pen.INK);
    }

    /** A dot where wires of one net part. */
    private void dots() {
        Map<List<Object>, Set<Point>> met = new LinkedHashMap<>();
        for (Wire wire : wires.wires()) {
            List<Point> points = wire.points();
            for (int i = 0; i < points.size(); i++) {
                var around = met.computeIfAbsent(List.of(wire.net(), points.get(i)), key -> new LinkedHashSet<>());
                if (i > 0) {
                    around.add(points.get(i - 1));
                }
                if (i + 1 < points.size()) {
                    around.add(points.get(i + 1));
                }
            }
        }
        List<Point> rails = grid.stands().stream()
                .filter(stand -> stand.look() == Look.RAILS)
                .flatMap(stand -> circuit.terminals(stand.part().id()).stream().flatMap(t -> stand.ends(t).stream()))
                .toList();
        var ends = new HashSet<Point>();
        wires.wires().forEach(wire -> {
            ends.add(wire.points().get(0));
            ends.add(wire.points().get(wire.points().size() - 1));
        });
        met.forEach((key, around) -> {
            Point at = (Point) key.get(1);
            boolean onRail = rails.contains(at) && ends.contains(at);
            boolean atSign = ends.contains(at) && !rails.contains(at) && around.size() > 1;
            if (around.size() > 2 || onRail || atSign) {
                pen.fill(new Ellipse2D.Double(across(at.x()) - DOT, down(at.y()) - DOT, 2 * DOT, 2 * DOT), Pen.INK);
            }
        });
    }

    private void stand(Stand stand) {
        switch (stand.look()) {
            case IN_LINE -> {
                double x = across(stand.x() + 3);
                Signs.inLine(pen, Columns.role(stand.part()), x, down(stand.row()));
                if (stand.height() > stand.name().size() + 2) {
                    Signs.inLine(pen, Columns.role(stand.part()), x, down(stand.row() + 2));
                    pen.line(x + 12, down(stand.row()) - 2, x + 12, down(stand.row() + 2) - 2, Line.DASHED, Pen.INK);
                }
                names(stand, across(stand.x() + 5), down(stand.y()) + 1.5, true);
            }
            case CELLS -> {
                Signs.cells(
                        pen, across(stand.x() + 2), down(stand.row()), down(stand.bottom() - 1), across(stand.right()));
                pen.left("+", across(stand.right() - 1), down(stand.row()) - 2, Type.NOTE);
                pen.left("\u2212", across(stand.right() - 1), down(stand.bottom() - 1) - 2, Type.NOTE);
                String word = live.word(stand.part());
                pen.left(
                        pen.fitted(word, STEP * stand.look().width(), Type.NOTE),
                        across(stand.x()),
                        down(stand.bottom()) + 2.5,
                        Type.NOTE);
            }
            case BLOCK, BESIDE -> block(stand);
            default -> {}
        }
    }

    private void names(Stand stand, double x, double y, boolean isCentred) {
        double room = STEP * stand.look().width() - (isCentred ? 2 : 13);
        for (int i = 0; i < stand.name().size(); i++) {
            String line = pen.fitted(stand.name().get(i), room, Type.SMALL);
            if (isCentred) {
                pen.centred(line, x, y + ROW * i, Type.SMALL);
            } else {
                pen.left(line, x, y + ROW * i, Type.SMALL);
            }
        }
    }

    private void block(Stand stand) {
        double x = across(stand.x());
        double y = down(stand.y()) - ROW / 2 + 2.5;
        double tall = ROW * stand.height() - 4;
        pen.box(x, y, STEP * stand.look().width(), tall, Pen.WHITE, Line.THIN);
        names(stand, x + 12, y + 8, false);
        if (stand.look() == Look.BLOCK) {
            pen.left("+", x + 3, down(stand.row()) + 2.6, Type.NOTE);
            pen.left("\u2212", x + 3, down(stand.bottom()) + 2.6, Type.NOTE);
            String word = circuit.terminals(stand.part().id()).stream().anyMatch(end -> wires.reaches(end))
                    ? live.word(stand.part())
                    : "nothing joined";
            pen.left(word, x + 12, y + tall - 2.5, Type.NOTE);
        } else {
            Link link = grid.partners().get(stand.part().id());
            double middle = x + 6;
            pen.line(middle, y, middle, y - 2 * ROW + 1, Line.FIRM, Pen.GREY);
            if (link != null) {
                pen.left(
                        pen.fitted(
                                CircuitDrawing.name(link), STEP * stand.look().width() - 10, Type.NOTE),
                        middle + 4,
                        y - ROW + 3,
                        Type.NOTE);
            }
        }
    }

    private void label(Wire wire) {
        Ground.Label label = wire.label();
        if (label != null) {
            double from = across(label.from().x());
            double to = across(label.to().x());
            String words = pen.fitted(label.words(), to - from, Type.SMALL);
            pen.over(words, (from + to) / 2, down(label.from().y()) + 2.5, Type.SMALL);
        }
    }
}
