package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
<<<<<<< HEAD
import java.util.LinkedHashMap;
=======
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
>>>>>>> dbaf77d3db2fcb36912e370426c1e9df6bbbb0c9
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Link;
import kerbfolio.job.Part;

/** The direct-current circuit from the cells to what they feed, with what may stay live marked. */
final class CircuitDrawing implements Figure {
    /** Room a letter takes, on the safe side [pt]. */
    static final double LETTER = 3.75;

    private static final double KEY = 24;
    private static final double LINE = 10;
    private static final int LEGENDS = 2;
    /** A caption names no more parts than this. */
    private static final int NAMED = 6;

    private final Circuit circuit;
    private final CircuitGrid grid;
    private final Wires wires;
    private final StillLive live;
    private final List<String> legend;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private CircuitDrawing(Dossier dossier) {
        circuit = dossier.car().circuit();
        grid = new CircuitGrid(dossier.car());
        live = new StillLive(dossier);
        wires = new Wires(grid, circuit, this::names);
        legend = legend();
    }

    static Optional<CircuitDrawing> of(Dossier dossier) {
        return dossier.car().circuit().isRecorded() ? Optional.of(new CircuitDrawing(dossier)) : Optional.empty();
    }

    /** A cable by its id and size; by a number where there is no room for them. */
    private List<String> names(Bond bond) {
        Link link = link(bond.id());
        String number = String.valueOf(numbers.computeIfAbsent(bond.id(), id -> numbers.size() + 1));
        return List.of(name(link), link.id(), number);
    }

    private Link link(String id) {
        return circuit.links().stream()
                .filter(link -> link.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    static String name(Link link) {
        return Words.joined(" ", link.id(), link.size() == null ? "" : link.size());
    }

    /** The cables of which no conductor shows all. */
    private List<String> legend() {
        var shown = new ArrayList<String>();
        numbers.forEach((id, number) -> {
            List<String> labels = wires.wires().stream()
                    .filter(wire -> wire.bond().id().equals(id))
                    .flatMap(wire -> Stream.ofNullable(wire.label()).map(Ground.Label::words))
                    .toList();
            if (labels.contains(number.toString())) {
                shown.add(number + ": " + name(link(id)));
            } else if (!labels.contains(name(link(id)))) {
                shown.add(id + ": " + link(id).size());
            }
        });
        return List.copyOf(shown);
    }

    @Override
    public String id() {
        return "circuit";
    }

    @Override
    public String caption() {
        List<String> above = circuit.parts().stream()
                .filter(live::isLive)
                .map(part -> part.title() + voltage(part))
                .toList();
        return Words.sentences(
                "From the cells on the left to what they feed on the right, the higher voltage above.",
                above.isEmpty()
                        ? "With " + live.out()
                                + " and every contactor welded closed no part has voltage left between its poles."
                        : "With " + live.out()
                                + " and every contactor welded closed there stays voltage between the poles of "
                                + some(above) + ".",
                "Thick broken lines then still hang on a box of cells.",
                full() > Pen.TALLEST ? Pen.SHRUNK : "");
    }

    private static String some(List<String> names) {
        return names.size() <= NAMED
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, NAMED)) + " and " + (names.size() - NAMED) + " more";
    }

    private String voltage(Part part) {
        Value value = live.between(part);
        return value.isKnown() ? " (" + value.text() + ")" : "";
    }

    @Override
    public String alternative() {
        String parts = circuit.parts().stream()
                .map(part -> part.title()
                        + (part.inside() == null ? "" : " in " + part.inside())
                        + (live.word(part).isEmpty() ? "" : ", " + live.word(part)))
                .collect(Collectors.joining("; "));
        String cables = circuit.links().stream()
                .map(link -> name(link) + " from " + link.from() + " to " + link.to()
                        + (circuit.bonds(link.id()).stream().anyMatch(live::is) ? ", live" : ", not live"))
                .collect(Collectors.joining("; "));
        String beside = grid.partners().values().stream()
                .map(link -> " " + name(link) + " from " + link.from() + " to " + link.to() + ".")
                .collect(Collectors.joining());
        return "Circuit diagram, with " + live.out() + ". Parts: " + parts + ". Conductors: " + cables + "." + beside;
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return Math.min(Pen.TALLEST, full());
    }

    private double full() {
        return CircuitSheet.ROW * (grid.rows() + 1) + KEY + LINE * row(legend.size() + LEGENDS - 1);
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this, full());
        new CircuitSheet(pen, circuit, grid, wires, live).draw();
        key(pen);
    }

<<<<<<< HEAD
    private static int row(int index) {
        return index / LEGENDS;
=======
    private static double across(double x) {
        return 1 + STEP * x;
    }

    private static double down(double y) {
        return ROW / 2 + ROW * y;
    }

    /** A part with the margin a frame keeps from it. */
    private static Rectangle2D room(Stand stand, double above) {
        return new Rectangle2D.Double(
                across(stand.x()) - STEP,
                down(stand.y()) - ROW / 2 - above,
                STEP * (stand.look().width() + 2),
                ROW * stand.height() + above);
    }

    /** A box of the car; where something stands between its parts that is not in it, the outline goes round that. */
    private void frame(Pen pen, Frame frame) {
        List<Stand> inside =
                frame.members().stream().flatMap(id -> grid.stand(id).stream()).toList();
        boolean isHub = inside.stream().anyMatch(stand -> stand.look() == Look.RAILS);
        Rectangle2D whole = inside.stream()
                .map(stand -> room(stand, isHub ? ROW : 0))
                .reduce(Rectangle2D::createUnion)
                .orElseThrow();
        whole.setRect(whole.getX(), whole.getY() - ROW, whole.getWidth(), whole.getHeight() + ROW);
        var outline = new Area(whole);
        grid.stands().stream()
                .filter(stand -> !frame.members().contains(stand.part().id()))
                .map(stand -> room(stand, 0))
                .filter(room -> room.intersects(whole))
                .forEach(room -> outline.subtract(new Area(new Rectangle2D.Double(
                        room.getX(), room.getY(), whole.getMaxX() - room.getX(), room.getHeight()))));
        pen.outline(outline, Line.CENTRE, Pen.GREY);
        pen.left(
                pen.fitted(frame.part().title(), whole.getWidth() - 6, Type.LABEL),
                whole.getX() + 4,
                whole.getY() + 8,
                Type.LABEL);
    }

    private void rails(Pen pen, Stand stand) {
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

    private void wire(Pen pen, Wire wire) {
        var path = new Path2D.Double();
        Point first = wire.points().get(0);
        path.moveTo(across(first.x()), down(first.y()));
        wire.points().forEach(point -> path.lineTo(across(point.x()), down(point.y())));
        pen.outline(path, live.is(wire.bond()) ? Line.LIVE : Line.THIN, Pen.INK);
    }

    /** A dot where wires of one net part. */
    private void dots(Pen pen) {
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

    private void stand(Pen pen, Stand stand) {
        Role role = stand.part().role() == null ? Role.OTHER : stand.part().role();
        switch (stand.look()) {
            case IN_LINE -> {
                double x = across(stand.x() + 3);
                Signs.inLine(pen, role, x, down(stand.row()));
                if (stand.height() > stand.name().size() + 2) {
                    Signs.inLine(pen, role, x, down(stand.row() + 2));
                    pen.line(x + 12, down(stand.row()) - 2, x + 12, down(stand.row() + 2) - 2, Line.DASHED, Pen.INK);
                }
                names(pen, stand, across(stand.x() + 5), down(stand.y()) + 1.5, true);
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
            case BLOCK, BESIDE -> block(pen, stand);
            default -> {}
        }
    }

    private void names(Pen pen, Stand stand, double x, double y, boolean isCentred) {
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

    private void block(Pen pen, Stand stand) {
        double x = across(stand.x());
        double y = down(stand.y()) - ROW / 2 + 2.5;
        double tall = ROW * stand.height() - 4;
        pen.box(x, y, STEP * stand.look().width(), tall, Pen.WHITE, Line.THIN);
        names(pen, stand, x + 12, y + 8, false);
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
                        pen.fitted(name(link), STEP * stand.look().width() - 10, Type.NOTE),
                        middle + 4,
                        y - ROW + 3,
                        Type.NOTE);
            }
        }
    }

    private void label(Pen pen, Wire wire) {
        Wires.Label label = wire.label();
        if (label != null) {
            double from = across(label.from().x());
            double to = across(label.to().x());
            String words = pen.fitted(label.words(), to - from, Type.SMALL);
            pen.over(words, (from + to) / 2, down(label.from().y()) + 2.5, Type.SMALL);
        }
>>>>>>> dbaf77d3db2fcb36912e370426c1e9df6bbbb0c9
    }

    private void key(Pen pen) {
        double y = full() - KEY - LINE * row(legend.size() + LEGENDS - 1) + 8;
        for (int i = 0; i < legend.size(); i++) {
            pen.left(
                    pen.fitted(legend.get(i), Pen.WIDTH / LEGENDS - 6, Type.SMALL),
                    Pen.WIDTH / LEGENDS * (i % LEGENDS),
                    y + LINE * row(i),
                    Type.SMALL);
        }
        y = full() - KEY + 8;
        pen.line(0, y - 2.5, 22, y - 2.5, Line.LIVE, Pen.INK);
        pen.left(
                "live: still hangs on a box of cells with " + pen.fitted(live.out(), 170, Type.NOTE)
                        + " and every contactor welded closed",
                26,
                y,
                Type.NOTE);
        pen.line(0, y + 7.5, 22, y + 7.5, Line.THIN, Pen.INK);
        pen.left(
                "on no box then; \"live\" with a voltage: that stays between the poles; \"live poles\": each on a box, no more between them",
                26,
                y + 10,
                Type.NOTE);
    }
}
