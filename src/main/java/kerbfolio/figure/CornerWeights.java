package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.car.Car;
import kerbfolio.car.Corner;
import kerbfolio.dossier.Dossier;

/** What stands on each wheel before and after, on a plan of the car; on each axle where no wheel was weighed alone. */
final class CornerWeights implements Figure {
    private static final double BLOCK = 128;
    private static final double BAR = 56;
    private static final double SUM = 94;
    private static final double PLAN_TOP = 52;
    private static final double FOOT = 36;
    private static final double ROW = 10.5;

    private final Plan plan;
    private final Change whole;
    private final List<Change> axles;
    private final Map<Corner, Change> wheels = new EnumMap<>(Corner.class);
    private final boolean isStated;

    private CornerWeights(Dossier dossier) {
        Car car = dossier.car();
        plan = Plan.of(dossier, PLAN_TOP);
        var system = dossier.units();
        whole = Change.of("whole car", car.received().total(), car.delivered().total(), car.change(), system);
        axles = Stream.of(Axle.values())
                .map(axle -> Change.of(
                        axle.toString(),
                        car.received().axle(axle),
                        car.delivered().axle(axle),
                        car.change(axle),
                        system))
                .toList();
        if (car.received().hasCorners() || car.delivered().hasCorners()) {
            for (Corner corner : Corner.values()) {
                wheels.put(
                        corner,
                        Change.of(
                                corner.toString(),
                                car.received().corner(corner),
                                car.delivered().corner(corner),
                                car.change(corner),
                                system));
            }
        }
        isStated = car.received().isStated();
    }

    static Optional<CornerWeights> of(Dossier dossier) {
        var figure = new CornerWeights(dossier);
        return Stream.concat(figure.axles.stream(), figure.wheels.values().stream())
                        .anyMatch(Change::isKnown)
                ? Optional.of(figure)
                : Optional.empty();
    }

    @Override
    public String id() {
        return "corner-weights";
    }

    @Override
    public String caption() {
        String gist = Words.joined(", ", axles.get(1).gist(), axles.get(0).gist());
        return Words.sentences(
                gist.isEmpty() ? "What stands on each wheel that was weighed." : "T" + gist.substring(1) + ".",
                mostChanged(),
                origin());
    }

    /** Of four; where a change is not known, nobody knows which is the largest. */
    private String mostChanged() {
        return wheels.values().stream()
                .filter(wheel ->
                        wheels.values().stream().allMatch(each -> each.change().isKnown()))
                .filter(wheel -> wheel.change().hasSide())
                .max(Comparator.comparingDouble(wheel -> Math.abs(wheel.change().si())))
                .map(wheel -> "Most changed: the " + wheel.what() + " wheel, "
                        + wheel.change().signed() + ".")
                .orElse("");
    }

    private String origin() {
        return isStated ? "The masses as received are stated, not weighed." : "";
    }

    @Override
    public String alternative() {
        return Words.sentences(
                        "Plan of the car, front to the left.",
                        origin(),
                        Stream.of(List.of(whole), axles, wheels.values())
                                .flatMap(Collection::stream)
                                .map(Change::words)
                                .filter(words -> !words.isEmpty())
                                .collect(Collectors.joining(" ")))
                + plan.words();
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return PLAN_TOP + Plan.WIDTH + (wheels.isEmpty() ? 4 : PLAN_TOP) + FOOT;
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        plan.draw(pen);
        double most = (wheels.isEmpty() ? axles : wheels.values())
                .stream()
                        .flatMap(change -> Stream.of(change.before(), change.after()))
                        .mapToDouble(Value::si)
                        .max()
                        .orElse(0);
        double low = PLAN_TOP + Plan.WIDTH + 6;
        if (wheels.isEmpty()) {
            block(pen, axles.get(0), block(Axle.FRONT), 4, most);
            block(pen, axles.get(1), block(Axle.REAR), 4, most);
        } else {
            leaders(pen, low);
            wheels.forEach((corner, wheel) -> {
                boolean right = corner == Corner.RIGHT_FRONT || corner == Corner.RIGHT_REAR;
                block(pen, wheel, block(corner.axle()), right ? 2 : low, most);
            });
            sum(pen, axles.get(0), 0);
            sum(pen, axles.get(1), Pen.WIDTH - SUM);
        }
        foot(pen);
    }

    /** A block begins over its wheel, and gives way where two would meet. */
    private double block(Axle axle) {
        double rear = plan.axle(Axle.REAR) - BAR / 2;
        return axle == Axle.REAR ? rear : Math.min(plan.axle(Axle.FRONT) - BAR / 2, rear - BLOCK - 4);
    }

    private void leaders(Pen pen, double low) {
        for (Axle axle : Axle.values()) {
            double block = block(axle) + BAR / 2;
            double high = PLAN_TOP - 5;
            pen.line(block, high, plan.axle(axle), plan.top(axle), Line.HAIR, Pen.GREY);
            pen.line(block, low - 1, plan.axle(axle), plan.bottom(axle), Line.HAIR, Pen.GREY);
        }
    }

    /** A hollow bar for before, a full one for after, one scale for all. */
    private static void block(Pen pen, Change change, double x, double y, double most) {
        pen.left(change.what(), x, y + 7, Type.LABEL);
        bar(pen, change.before(), x, y + ROW, most, false);
        bar(pen, change.after(), x, y + 2 * ROW, most, true);
        if (change.change().isKnown()) {
            pen.left(change.change().signed(), x, y + 4 * ROW - 1, Type.LOUD);
        }
    }

    private static void bar(Pen pen, Value value, double x, double y, double most, boolean after) {
        double length = most <= 0 ? 0 : Math.max(0, BAR * value.si() / most);
        double begin = value.isKnown() ? x + length + 4 : x;
        if (value.isKnown()) {
            pen.box(x, y + 1.6, length, ROW - 4.4, after ? Pen.ACCENT : Pen.WHITE, Line.THIN);
        }
        Type type = after ? Type.STRONG : Type.TEXT;
        pen.left(pen.fitted(value.text(), BLOCK - length - 4, type), begin, y + 7.4, type);
    }

    private static void sum(Pen pen, Change axle, double x) {
        double y = PLAN_TOP + Plan.WIDTH / 2 - 24;
        pen.left(axle.what(), x, y + 7, Type.LABEL);
        pen.left(pen.fitted(axle.before().text(), SUM, Type.TEXT), x, y + ROW + 8, Type.TEXT);
        pen.left(pen.fitted(axle.after().text(), SUM, Type.STRONG), x, y + 2 * ROW + 8, Type.STRONG);
        if (axle.change().isKnown()) {
            pen.left(pen.fitted(axle.change().signed(), SUM, Type.LOUD), x, y + 4 * ROW, Type.LOUD);
        }
    }

    private void foot(Pen pen) {
        double y = height() - FOOT;
        pen.line(0, y + 4, Pen.WIDTH, y + 4, Line.HAIR, Pen.GREY);
        pen.left(whole.what(), 0, y + 15.5, Type.LABEL);
        double x = SUM + 12;
        if (whole.before().isKnown()) {
            x = word(pen, whole.before().text(), x, y + 15.5, Type.TEXT) + 22;
            pen.arrow(x - 18, y + 13, x - 5, y + 13);
        }
        x = word(pen, whole.after().text(), x, y + 15.5, Type.STRONG);
        if (whole.change().isKnown()) {
            pen.left(whole.change().signed(), x + 14, y + 15.5, Type.LOUD);
        }
        x = key(pen, isStated ? "as received (stated)" : "as received", 0, y + 32, false);
        key(pen, "as delivered", x + 10, y + 32, true);
        pen.right(plan.note(), Pen.WIDTH, y + 32, Type.NOTE);
    }

    /** What the bars and the marks of the centre of gravity stand for. */
    private double key(Pen pen, String words, double x, double y, boolean after) {
        pen.box(x, y - 5.5, 12, 6, after ? Pen.ACCENT : Pen.WHITE, Line.THIN);
        if (plan.hasCentre(after)) {
            pen.centre(x + 21, y - 2.5, after);
        }
        return word(pen, words, x + (plan.hasCentre(after) ? 30 : 15), y, Type.NOTE);
    }

    private static double word(Pen pen, String words, double x, double y, Type type) {
        pen.left(words, x, y, type);
        return x + pen.width(words, type);
    }
}
