package kerbfolio.figure;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.dossier.Dossier;
import kerbfolio.figure.Whereabouts.Place;
import kerbfolio.figure.Whereabouts.Run;
import kerbfolio.figure.Whereabouts.Spot;
import kerbfolio.job.Role;

/** Where the high-voltage parts and cables lie in the car, from above and, where heights are recorded, from its side. */
final class LocationPlan implements Figure {
    private static final double HEAD = 26;
    private static final double ROOM = 16;
    private static final double ROOF = 0.54;
    private static final double WIDE = 26;
    private static final double DEEP = 18;
    private static final double LOW = 11;
    private static final double MARK = 2.6;
    private static final int LETTERS = 26;

    private final Plan plan;
    private final Whereabouts whereabouts;
    private final Elevation elevation;
    private final boolean hasSide;
    private final Legend legend;
    private final LocationKey key;

    private LocationPlan(Dossier dossier) {
        plan = Plan.large(dossier, HEAD);
        whereabouts = new Whereabouts(dossier);
        hasSide = drawn().anyMatch(spot -> spot.place().z().isKnown());
        elevation = Elevation.side(plan.wheelbase(), ground(), length());
        legend = legend();
        key = new LocationKey(whereabouts, legend, plan.note());
    }

    static Optional<LocationPlan> of(Dossier dossier) {
        var figure = new LocationPlan(dossier);
        return figure.drawn().findAny().isPresent() ? Optional.of(figure) : Optional.empty();
    }

    private Stream<Spot> drawn() {
        return whereabouts.spots().stream().filter(Spot::isDrawn);
    }

    private double length() {
        return plan.axle(Axle.REAR) - plan.axle(Axle.FRONT);
    }

    private double below() {
        return HEAD + Plan.tall() + ROOM;
    }

    private double ground() {
        return below() + HEAD + ROOF * length() + ROOM / 2;
    }

    private double foot() {
        return (hasSide ? ground() + HEAD : below()) + ROOM;
    }

    private Legend legend() {
        var entries = new ArrayList<Legend.Entry>();
        whereabouts
                .numbered()
                .forEach((number, spot) ->
                        entries.add(new Legend.Entry(String.valueOf(number), spot.words(), spot.words())));
        for (int i = 0; i < whereabouts.runs().size(); i++) {
            Run run = whereabouts.runs().get(i);
            entries.add(new Legend.Entry(
                    letter(i),
                    run.names(),
                    run.names() + (run.isRouted() ? ", route recorded" : ", straight line, route not recorded")));
        }
        return new Legend(List.copyOf(entries));
    }

    /** Letters that go on after z. */
    static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % LETTERS));
        return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
    }

    @Override
    public String id() {
        return "location-plan";
    }

    @Override
    public String caption() {
        String cuts = drawn().flatMap(spot -> spot.cuts().stream().map(cut -> cut + " (" + spot.number() + ")"))
                .collect(Collectors.joining(", "));
        long straight =
                whereabouts.runs().stream().filter(run -> !run.isRouted()).count();
        return Words.sentences(
                "Where the high-voltage parts lie; left is left seen from the driver's seat.",
                cuts.isEmpty() ? "" : "The circuit is cut at: " + cuts + ".",
                straight == 0
                        ? ""
                        : "Broken lines join the ends of " + straight + (straight == 1 ? " run" : " runs")
                                + " whose way nobody recorded: look before you cut or drill.",
                full() > Pen.TALLEST ? Pen.SHRUNK : "");
    }

    @Override
    public String alternative() {
        return Words.sentences(
                "Plan of the car, front to the left, left seen from the driver's seat; x from the front axle rearward,"
                        + " y from the centre line to the right, z above the ground.",
                legend.words() + ".",
                key.absent().stream().map(line -> line + ".").collect(Collectors.joining(" ")));
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
        return foot() + key.height();
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this, full());
        plan.draw(pen);
        pen.left("from above", 0, 8, Type.LABEL);
        view(
                pen,
                place -> new double[] {
                    plan.along(place.x().si()), plan.across(place.y().si())
                },
                place -> true,
                DEEP,
                HEAD - 6,
                below(),
                HEAD + Plan.tall() / 2);
        if (hasSide) {
            elevation.side(pen);
            pen.left("from its left side", 0, below() + 14, Type.LABEL);
            view(
                    pen,
                    place -> new double[] {
                        elevation.at(place.x().si()), elevation.above(place.z().si())
                    },
                    place -> place.z().isKnown(),
                    LOW,
                    below() + HEAD - 4,
                    ground() + ROOM,
                    ground() - 0.2 * length());
        }
        key.draw(pen, foot());
    }

    private void view(
            Pen pen,
            Function<Place, double[]> on,
            Predicate<Place> isKnown,
            double deep,
            double above,
            double under,
            double middle) {
        var callouts = new Callouts();
        List<Spot> spots = drawn().filter(spot -> isKnown.test(spot.place())).toList();
        for (Spot spot : spots) {
            double[] at = on.apply(spot.place());
            if (spot.part().role() == Role.BATTERY) {
                var box = new Rectangle2D.Double(at[0] - WIDE / 2, at[1] - deep / 2, WIDE, deep);
                pen.fill(box, Pen.PALE);
                pen.outline(box, Line.THIN, Pen.INK);
            }
        }
        List<List<double[]>> ways = new ArrayList<>();
        for (Run run : whereabouts.runs()) {
            List<double[]> way = run.points().stream().allMatch(isKnown)
                    ? run.points().stream().map(on).toList()
                    : List.of();
            ways.add(way);
            if (!way.isEmpty()) {
                var path = new Path2D.Double();
                path.moveTo(way.get(0)[0], way.get(0)[1]);
                way.forEach(point -> path.lineTo(point[0], point[1]));
                pen.outline(path, run.isRouted() ? Line.FIRM : Line.DASHED, Pen.ACCENT);
            }
        }
        for (Spot spot : spots) {
            double[] at = on.apply(spot.place());
            mark(pen, spot, at[0], at[1]);
            String number = String.valueOf(spot.number());
            boolean isCut = !spot.cuts().isEmpty();
            callouts.add(
                    isCut ? number + " cut: " + String.join(", ", spot.cuts()) : number,
                    number,
                    at[0],
                    at[1] - (isCut ? 8 : 0));
        }
        callouts.draw(pen, above, under, middle);
        for (int i = 0; i < ways.size(); i++) {
            if (!ways.get(i).isEmpty()) {
                callouts.tag(pen, letter(i), ways.get(i));
            }
        }
    }

    /** A full square where a part lies, a hollow one where it is only known along the car, a barred gap where the circuit is cut. */
    private static void mark(Pen pen, Spot spot, double x, double y) {
        if (!spot.cuts().isEmpty()) {
            pen.box(x - Signs.LENGTH / 2 - 1, y - 8, Signs.LENGTH + 2, 12, Pen.WHITE, Line.THIN);
            Signs.inLine(pen, Role.DISCONNECT, x - Signs.LENGTH / 2, y);
        } else {
            pen.box(
                    x - MARK,
                    y - MARK,
                    2 * MARK,
                    2 * MARK,
                    spot.place().y().isKnown() ? Pen.INK : Pen.WHITE,
                    Line.THIN);
        }
    }
}
