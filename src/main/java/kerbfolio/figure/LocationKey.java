package kerbfolio.figure;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.figure.Whereabouts.Spot;

/** What stands under the location plan: how to read it, the names, and what could not be drawn. */
final class LocationKey {
    private static final double LINE = 9.5;
    private static final double KEY = 14;

    private final Whereabouts whereabouts;
    private final Legend legend;
    private final String note;

    LocationKey(Whereabouts whereabouts, Legend legend, String note) {
        this.whereabouts = whereabouts;
        this.legend = legend;
        this.note = note;
    }

    /** What cannot be drawn. */
    List<String> absent() {
        String zones = whereabouts.spots().stream()
                .filter(spot -> !spot.isDrawn() && !spot.zone().isEmpty())
                .map(Spot::words)
                .collect(Collectors.joining("; "));
        String none = whereabouts.spots().stream()
                .filter(spot -> !spot.isDrawn() && spot.zone().isEmpty())
                .map(Spot::words)
                .collect(Collectors.joining("; "));
        return Stream.of(
                        zones.isEmpty() ? "" : "place known in words only: " + zones,
                        none.isEmpty() ? "" : "no place recorded: " + none,
                        whereabouts.lost().isEmpty()
                                ? ""
                                : "cables not drawn, an end has no place: " + String.join(", ", whereabouts.lost()))
                .filter(line -> !line.isEmpty())
                .toList();
    }

    double height() {
        int lost = absent().stream()
                .mapToInt(line -> Words.broken(line, Words.FULL).size())
                .sum();
        return KEY + legend.height() + LINE * (lost + 2);
    }

    void draw(Pen pen, double foot) {
        double y = foot;
        pen.left(note, 0, y, Type.NOTE);
        y += LINE;
        pen.line(0, y - 2.5, 18, y - 2.5, Line.FIRM, Pen.ACCENT);
        pen.left("route recorded", 21, y, Type.NOTE);
        pen.line(82, y - 2.5, 100, y - 2.5, Line.DASHED, Pen.ACCENT);
        pen.left("straight line, route not recorded", 103, y, Type.NOTE);
        pen.box(216, y - 5, 5, 5, Pen.WHITE, Line.THIN);
        pen.left(
                "place across the car not recorded; x rearward of the front axle, y to the right, z up",
                224,
                y,
                Type.NOTE);
        double begin = y + LINE + 3;
        legend.draw(pen, begin);
        y = begin + legend.height() + 3;
        for (String line : absent()) {
            for (String part : Words.broken(line, Words.FULL)) {
                pen.left(pen.fitted(part, Pen.WIDTH, Type.NOTE), 0, y, Type.NOTE);
                y += LINE;
            }
        }
    }
}
