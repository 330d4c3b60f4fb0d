package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** When each fuse melts, what the smallest cable behind it withstands, and what a short circuit draws. */
final class FuseCurves implements Figure {
    private static final double LEFT = 34;
    private static final double TOP = 16;
    private static final double BOTTOM = 246;
    private static final double HEAD = 34;
    private static final double LINE = 10;
    private static final double FOOT = 6;
    /** Longer than this a cable gives heat away, and the line says nothing (IEC 60364-5-54, adiabatic heating) [s]. */
    private static final double ADIABATIC = 5;

    private final List<MeltingCurve> curves;
    /** Cables by what they withstand: those that withstand alike share a line. */
    private final Map<String, List<MeltingCurve.Withstand>> cables;

    private final Value prospective;
    private final Map<String, Value> contactors = new LinkedHashMap<>();

    private FuseCurves(Dossier dossier) {
        Car car = dossier.car();
        prospective = Value.of(car.prospectiveCurrent(), dossier.units());
        curves = car.circuit().parts(Role.FUSE).stream()
                .map(fuse -> MeltingCurve.of(dossier, fuse))
                .filter(curve -> curve.points().size() > 1)
                .toList();
        cables = curves.stream()
                .flatMap(curve -> curve.cable().stream())
                .distinct()
                .collect(Collectors.groupingBy(MeltingCurve.Withstand::heat, LinkedHashMap::new, Collectors.toList()));
        for (Part part : car.circuit().contactors()) {
            Value value = Value.of(car.contactor(part).breakingCurrent(), dossier.units());
            if (value.isKnown() && value.si() > 0) {
                contactors.merge(value.text(), value, (one, other) -> one);
            }
        }
    }

    static Optional<FuseCurves> of(Dossier dossier) {
        var figure = new FuseCurves(dossier);
        return figure.curves.isEmpty() ? Optional.empty() : Optional.of(figure);
    }

    @Override
    public String id() {
        return "fuse-curves";
    }

    @Override
    public String caption() {
        return Words.sentences(
                "A fuse whose curve lies below the broken line of its cable melts before that cable is too hot.",
                prospective.isKnown() ? "A short circuit draws " + prospective.text() + " at most." : "",
                "Left of its curve a fuse does not open; there only a contactor can, up to its breaking current.");
    }

    @Override
    public String alternative() {
        return "Time to melt over current, both logarithmic. "
                + Stream.concat(
                                lines().stream().map(Entry::words),
                                Stream.concat(
                                        prospective.isKnown()
                                                ? Stream.of("prospective current " + prospective.text())
                                                : Stream.empty(),
                                        contactors.keySet().stream().map(current -> "contactor breaks " + current)))
                        .collect(Collectors.joining(". "))
                + ".";
    }

    /** A number or letter of the chart with its words. */
    private record Entry(String mark, String words) {}

    private List<Entry> lines() {
        var lines = new ArrayList<Entry>();
        for (int i = 0; i < curves.size(); i++) {
            lines.add(new Entry(String.valueOf(i + 1), curves.get(i).words()));
        }
        cables.forEach((heat, alike) -> lines.add(new Entry(
                LocationPlan.letter(lines.size() - curves.size()),
                alike.stream().map(MeltingCurve.Withstand::id).collect(Collectors.joining(", ")) + ": withstands "
                        + heat)));
        return lines;
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return BOTTOM + HEAD + LINE * rows() + FOOT;
    }

    private int rows() {
        return lines().stream()
                .mapToInt(entry -> Words.broken(entry.words(), Words.FULL).size())
                .sum();
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        Axis across = axis(point -> point.current().si(), true, LEFT, Pen.WIDTH - 12);
        Axis up = axis(point -> point.time().si(), false, BOTTOM, TOP);
        var chart = new Chart(pen, across, up);
        chart.grid("amperes, logarithmic", "seconds until it has melted, logarithmic");
        int row = 0;
        for (Value contactor : contactors.values()) {
            chart.upright("contactor breaks " + contactor.text(), contactor.si(), row++, Line.CENTRE);
        }
        if (prospective.isKnown()) {
            chart.upright("short circuit " + prospective.text(), prospective.si(), row, Line.FIRM);
        }
        int letter = 0;
        for (List<MeltingCurve.Withstand> alike : cables.values()) {
            double root = alike.get(0).root();
            chart.curve(
                    LocationPlan.letter(letter++),
                    current -> Math.pow(root / current, 2),
                    root / Math.sqrt(ADIABATIC),
                    Double.MAX_VALUE,
                    Line.DASHED);
        }
        for (int i = 0; i < curves.size(); i++) {
            List<double[]> points = curves.get(i).points().stream()
                    .map(point ->
                            new double[] {point.current().si(), point.time().si()})
                    .toList();
            chart.joined(String.valueOf(i + 1), points, Line.THIN);
            points.forEach(point -> chart.dot(point[0], point[1], true));
        }
        chart.finish();
        double y = BOTTOM + HEAD;
        for (Entry entry : lines()) {
            pen.left(entry.mark(), 0, y, Type.STRONG);
            for (String words : Words.broken(entry.words(), Words.FULL)) {
                pen.left(pen.fitted(words, Pen.WIDTH - 14, Type.SMALL), 14, y, Type.SMALL);
                y += LINE;
            }
        }
    }

    private Axis axis(ToDoubleFunction<MeltingCurve.Point> of, boolean isCurrent, double begin, double end) {
        double[] values = DoubleStream.concat(
                        curves.stream()
                                .flatMap(curve -> curve.points().stream())
                                .mapToDouble(of),
                        contactors.values().stream()
                                .filter(contactor -> isCurrent)
                                .mapToDouble(Value::si))
                .sorted()
                .toArray();
        double most = values[values.length - 1];
        double wanted = isCurrent ? Math.max(most, prospective.si()) : Math.max(most, ADIABATIC);
        return Axis.decades(values[0], wanted, begin, end);
    }
}
