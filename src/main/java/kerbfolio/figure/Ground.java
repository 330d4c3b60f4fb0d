package kerbfolio.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import kerbfolio.figure.Stand.Point;
import org.jspecify.annotations.Nullable;

/** What every point of the grid holds: parts, words, and the nets that run through it. */
final class Ground {
    private final int width;
    private final int height;
    /** Which net runs through a point along the figure, and which up and down; 0 for none. */
    final int[][] taken;

    final boolean[] solid;
    final boolean[] lettered;
    /** Sides of frames. */
    final boolean[] edge;

    Ground(int width, int height) {
        this.width = width;
        this.height = height;
        taken = new int[2][width * height];
        solid = new boolean[width * height];
        lettered = new boolean[width * height];
        edge = new boolean[width * height];
    }

    /** Free points of a wire beside each other, for words. */
    record Label(String words, Point from, Point to) {}

    /** The number of a point; one outside lies on the edge. */
    int node(Point point) {
        return Math.max(0, Math.min(height - 1, point.y())) * width + Math.max(0, Math.min(width - 1, point.x()));
    }

    /** A net runs along these points. */
    void take(List<Point> points, int net) {
        for (int i = 1; i < points.size(); i++) {
            int direction = points.get(i).y() == points.get(i - 1).y() ? 0 : 1;
            taken[direction][node(points.get(i - 1))] = net;
            taken[direction][node(points.get(i))] = net;
        }
        solid[node(points.get(0))] = true;
        solid[node(points.get(points.size() - 1))] = true;
    }

    /** Room for words: along the longest stretch that nothing crosses, else over one that runs up and down. */
    @Nullable
    Label place(String words, List<Point> points) {
        int needed = (int) Math.ceil(words.length() * CircuitDrawing.LETTER / CircuitSheet.STEP);
        List<Point> best = List.of();
        List<Point> run = new ArrayList<>();
        for (Point point : points) {
            boolean isFree = taken[1][node(point)] == 0 && isOpen(point);
            if (!isFree || (!run.isEmpty() && run.get(run.size() - 1).y() != point.y())) {
                run = new ArrayList<>();
            }
            if (isFree) {
                run.add(point);
            }
            best = run.size() > best.size() ? List.copyOf(run) : best;
        }
        if (best.size() > needed) {
            int begin = (best.size() - needed - 1) / 2;
            return letter(words, best.get(begin), best.get(begin + needed));
        }
        return upright(words, points, (needed + 1) / 2);
    }

    private @Nullable Label upright(String words, List<Point> points, int half) {
        for (int i = 1; i + 1 < points.size(); i++) {
            Point at = points.get(i);
            boolean isStraight = points.get(i - 1).x() == points.get(i + 1).x();
            boolean isClear = IntStream.rangeClosed(at.x() - half, at.x() + half)
                    .allMatch(x -> x >= 0
                            && x < width
                            && isOpen(new Point(x, at.y()))
                            && taken[0][node(new Point(x, at.y()))] == 0
                            && (x == at.x() || taken[1][node(new Point(x, at.y()))] == 0));
            if (isStraight && isClear) {
                return letter(words, new Point(at.x() - half, at.y()), new Point(at.x() + half, at.y()));
            }
        }
        return null;
    }

    private boolean isOpen(Point point) {
        return !solid[node(point)] && !lettered[node(point)] && !edge[node(point)];
    }

    private Label letter(String words, Point one, Point other) {
        var label = new Label(
                words,
                new Point(Math.min(one.x(), other.x()), one.y()),
                new Point(Math.max(one.x(), other.x()), one.y()));
        for (int x = label.from().x(); x <= label.to().x(); x++) {
            lettered[node(new Point(x, one.y()))] = true;
        }
        return label;
    }
}
