package kerbfolio.figure;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import kerbfolio.quantity.Notation;

/** Two axes with their figures, and curves on them with numbers where there is room. */
final class Chart {
    private static final int STEPS = 120;
    private static final double CROSS = 3;

    private final Pen pen;
    private final Axis across;
    private final Axis up;
    private final Callouts numbers = new Callouts();
    private final List<Mark> marks = new ArrayList<>();

    /** The number of a curve, set when all curves are drawn. */
    private record Mark(String number, List<double[]> points) {}

    Chart(Pen pen, Axis across, Axis up) {
        this.pen = pen;
        this.across = across;
        this.up = up;
    }

    /** Frame, lines and figures of both axes, and what they mean. */
    void grid(String acrossWords, String upWords) {
        for (double value : across.ticks()) {
            pen.line(across.at(value), up.begin(), across.at(value), up.end(), Line.HAIR, Pen.PALE);
            pen.centred(Notation.plain(value), across.at(value), up.begin() + 9, Type.NOTE);
        }
        for (double value : up.ticks()) {
            pen.line(across.begin(), up.at(value), across.end(), up.at(value), Line.HAIR, Pen.PALE);
            pen.right(Notation.plain(value), across.begin() - 4, up.at(value) + 2.5, Type.NOTE);
        }
        pen.outline(
                new Rectangle2D.Double(across.begin(), up.end(), across.end() - across.begin(), up.begin() - up.end()),
                Line.THIN,
                Pen.GREY);
        pen.right(acrossWords, across.end(), up.begin() + 19, Type.NOTE);
        pen.left(upWords, across.begin(), up.end() - 5, Type.NOTE);
    }

    /** A curve between two values of the lower axis, with its number. */
    void curve(String number, DoubleUnaryOperator of, double from, double to, Line line) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double value = across.value((double) i / STEPS);
            double result = of.applyAsDouble(value);
            if (value >= from && value <= to && up.has(result)) {
                points.add(new double[] {value, result});
            }
        }
        joined(number, points, line);
    }

    /** Points joined by straight lines, with their number. */
    void joined(String number, List<double[]> values, Line line) {
        if (values.size() < 2) {
            return;
        }
        List<double[]> points = values.stream()
                .map(value -> new double[] {across.at(value[0]), up.at(value[1])})
                .toList();
        var path = new Path2D.Double();
        path.moveTo(points.get(0)[0], points.get(0)[1]);
        points.forEach(point -> path.lineTo(point[0], point[1]));
        pen.outline(path, line, Pen.INK);
        marks.add(new Mark(number, points));
    }

    /** A line from top to bottom at a value, with words beside its upper end. */
    void upright(String words, double value, int row, Line line) {
        double x = across.at(value);
        pen.line(x, up.begin(), x, up.end(), line, Pen.INK);
        double y = up.end() + 9 + 10 * row;
        double wide = pen.width(words, Type.STRONG);
        boolean isLeft = x + wide + 6 > across.end();
        words(words, isLeft ? x - wide - 4 : x + 4, y);
    }

    /** A line from left to right at a value, with words above its right or left end. */
    void level(String words, double value, Line line) {
        double y = up.at(value);
        pen.line(across.begin(), y, across.end(), y, line, Pen.INK);
        words(words, across.begin() + 4, y - 3);
    }

    private void words(String words, double x, double y) {
        double wide = pen.width(words, Type.STRONG);
        var room = new Rectangle2D.Double(x - 1, y - 7.5, wide + 2, 9.5);
        pen.fill(room, Pen.WHITE);
        pen.left(words, x, y, Type.STRONG);
        numbers.keep(room);
    }

    /** A measured point. */
    void cross(double value, double result) {
        double x = across.at(value);
        double y = up.at(result);
        pen.line(x - CROSS, y - CROSS, x + CROSS, y + CROSS, Line.FIRM, Pen.INK);
        pen.line(x - CROSS, y + CROSS, x + CROSS, y - CROSS, Line.FIRM, Pen.INK);
        numbers.keep(new Rectangle2D.Double(x - CROSS, y - CROSS, 2 * CROSS, 2 * CROSS));
    }

    /** Words beside a point, above it to the right or below it to the left (there first, if asked), where there is room. */
    void note(String words, double value, double result, boolean isLeft) {
        double wide = pen.width(words, Type.STRONG);
        double[][] places = {
            {across.at(value) + 5, up.at(result) - 4}, {across.at(value) - 5 - wide, up.at(result) + 10}
        };
        for (int i = 0; i < places.length; i++) {
            double[] place = places[isLeft ? places.length - 1 - i : i];
            var room = new Rectangle2D.Double(place[0] - 1, place[1] - 7, wide + 2, 9);
            if (room.getX() > across.begin() && room.getMaxX() < across.end() && numbers.isFree(room)) {
                words(words, place[0], place[1]);
                return;
            }
        }
    }

    /** A figure that ends or begins a curve. */
    void dot(double value, double result, boolean isFull) {
        Shape dot = new Ellipse2D.Double(across.at(value) - 2, up.at(result) - 2, 4, 4);
        pen.fill(dot, isFull ? Pen.INK : Pen.WHITE);
        pen.outline(dot, Line.THIN, Pen.INK);
    }

    /** The numbers of all curves, each where there is room. */
    void finish() {
        for (Mark mark : marks) {
            List<double[]> points = mark.points();
            // Not at its beginning first, where curves often meet.
            if (!numbers.tag(pen, mark.number(), points.subList((points.size() - 1) / 3, points.size()))) {
                numbers.tag(pen, mark.number(), points);
            }
        }
    }
}
