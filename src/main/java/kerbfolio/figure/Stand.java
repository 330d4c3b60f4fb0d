package kerbfolio.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import kerbfolio.car.Terminal;
import kerbfolio.job.Part;

/**
 * A part on the grid of the circuit drawing. Grid points are {@code x} across and {@code y} down.
 *
 * @param look how it is drawn
 * @param isTurned whether terminal 1 lies on the right
 */
record Stand(Part part, Look look, List<String> name, int x, int y, int height, boolean isTurned) {
    /** How a part is drawn, and how many grid steps wide. */
    enum Look {
        CELLS(8),
        IN_LINE(10),
        RAILS(3),
        BLOCK(11),
        /** What hangs on a block without taking part in the circuit: a motor, an inlet. */
        BESIDE(11);

        private final int width;

        Look(int width) {
            this.width = width;
        }

        int width() {
            return width;
        }
    }

    /** A point of the grid. */
    record Point(int x, int y) {}

    private static final int LEAD = 3;
    private static final int SIGN = 4;

    Stand at(int left, int top) {
        return new Stand(part, look, name, left, top, height, isTurned);
    }

    Stand tall(int rows) {
        return new Stand(part, look, name, x, y, rows, isTurned);
    }

    int right() {
        return x + look.width();
    }

    int bottom() {
        return y + height - 1;
    }

    /** The row of its first conductor. */
    int row() {
        return look == Look.IN_LINE ? y + name.size() : look == Look.RAILS ? y : y + 1;
    }

    private int second() {
        return look == Look.IN_LINE ? row() + 2 : bottom() - (look == Look.CELLS ? 1 : 0);
    }

    /** Where its terminals lie; a rail is a terminal from end to end. */
    List<Point> ends(Terminal terminal) {
        return switch (terminal.name()) {
            case "+" -> look == Look.RAILS ? rail(x) : List.of(new Point(look == Look.CELLS ? right() : x, row()));
            case "-" ->
                look == Look.RAILS ? rail(x + 2) : List.of(new Point(look == Look.CELLS ? right() : x, second()));
            case "1" -> List.of(end(isTurned, row()));
            case "2" -> List.of(end(!isTurned, row()));
            case "3" -> List.of(end(isTurned, second()));
            default -> List.of(end(!isTurned, second()));
        };
    }

    private List<Point> rail(int at) {
        return IntStream.rangeClosed(y, bottom())
                .mapToObj(row -> new Point(at, row))
                .toList();
    }

    private Point end(boolean isRight, int row) {
        return new Point(isRight ? x + LEAD + SIGN : x + LEAD, row);
    }

    /** The points it covers, which no wire passes. */
    List<Point> covered() {
        var points = new ArrayList<Point>();
        if (look == Look.IN_LINE) {
            points.addAll(area(x, y, right(), row() - 1));
            points.addAll(area(x + LEAD, row(), x + LEAD + SIGN, bottom() - 1));
        } else if (look != Look.RAILS) {
            points.addAll(area(x, look == Look.BESIDE ? y - 2 : y, right(), bottom()));
        }
        return points;
    }

    private static List<Point> area(int left, int top, int right, int bottom) {
        return IntStream.rangeClosed(top, bottom)
                .boxed()
                .flatMap(row -> IntStream.rangeClosed(left, right).mapToObj(column -> new Point(column, row)))
                .toList();
    }

    /** Words on at most two lines, broken between words. */
    static List<String> lines(String words, int letters) {
        String whole = Pen.clean(words);
        int space = whole.length() <= letters ? -1 : whole.lastIndexOf(' ', letters);
        return space <= 0 ? List.of(whole) : List.of(whole.substring(0, space), whole.substring(space + 1));
    }
}
