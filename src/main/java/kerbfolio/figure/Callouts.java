package kerbfolio.figure;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Words and tags on a view that must not lie on each other: numbers in rows above and below it, tags where there is room. */
final class Callouts {
    private static final double GAP = 4;
    private static final double TAG = 4.6;
    private static final double[] SHARES = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9};

    private final List<Call> calls = new ArrayList<>();
    private final List<Rectangle2D> taken = new ArrayList<>();

    /** A word for a point. */
    private record Call(String words, String brief, double x, double y) {}

    /** A point with its word; the brief one stands where the row is full. */
    void add(String words, String brief, double x, double y) {
        calls.add(new Call(words, brief, x, y));
        keep(new Rectangle2D.Double(x - TAG, y - TAG, 2 * TAG, 2 * TAG));
    }

    /** Room that is taken. */
    void keep(Rectangle2D room) {
        taken.add(room);
    }

    boolean isFree(Rectangle2D room) {
        return taken.stream().noneMatch(room::intersects);
    }

    /** All words in two rows, those of the upper points above, with a line to each point. */
    void draw(Pen pen, double above, double below, double middle) {
        row(pen, calls.stream().filter(call -> call.y() <= middle).toList(), above, above + 2.5);
        row(pen, calls.stream().filter(call -> call.y() > middle).toList(), below, below - 7);
    }

    private static void row(Pen pen, List<Call> calls, double y, double from) {
        List<Call> sorted = calls.stream()
                .sorted(Comparator.comparingDouble(Call::x).thenComparingDouble(Call::y))
                .toList();
        double whole = sorted.stream()
                .mapToDouble(call -> pen.width(call.words(), Type.STRONG) + GAP)
                .sum();
        boolean isFull = whole > Pen.WIDTH;
        double[] places = new double[sorted.size()];
        double end = 0;
        for (int i = 0; i < places.length; i++) {
            double half = pen.width(words(sorted.get(i), isFull), Type.STRONG) / 2;
            places[i] = Math.max(end + half, sorted.get(i).x());
            end = places[i] + half + GAP;
        }
        double limit = Pen.WIDTH;
        for (int i = places.length - 1; i >= 0; i--) {
            double half = pen.width(words(sorted.get(i), isFull), Type.STRONG) / 2;
            places[i] = Math.min(places[i], limit - half);
            limit = places[i] - half - GAP;
        }
        for (int i = 0; i < places.length; i++) {
            Call call = sorted.get(i);
            pen.line(places[i], from, call.x(), call.y(), Line.HAIR, Pen.INK);
            pen.centred(words(call, isFull), places[i], y, Type.STRONG);
        }
    }

    private static String words(Call call, boolean isFull) {
        return isFull ? call.brief() : call.words();
    }

    /** A letter in a ring on a line of points, where nothing else lies; whether there was room. */
    boolean tag(Pen pen, String letter, List<double[]> way) {
        for (double share : SHARES) {
            for (int i = 1; i < way.size(); i++) {
                double[] a = way.get(i - 1);
                double[] b = way.get(i);
                double x = a[0] + share * (b[0] - a[0]);
                double y = a[1] + share * (b[1] - a[1]);
                double wide = Math.max(TAG, pen.width(letter, Type.SMALL) / 2 + 1.5);
                var room = new Rectangle2D.Double(x - wide, y - TAG, 2 * wide, 2 * TAG);
                if (isFree(room)) {
                    keep(room);
                    var ring = new Ellipse2D.Double(x - wide, y - TAG, 2 * wide, 2 * TAG);
                    pen.fill(ring, Pen.WHITE);
                    pen.outline(ring, Line.HAIR, Pen.INK);
                    pen.centred(letter, x, y + 2.4, Type.SMALL);
                    return true;
                }
            }
        }
        return false;
    }
}
