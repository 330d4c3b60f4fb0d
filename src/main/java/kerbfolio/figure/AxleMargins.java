package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Axle;
import kerbfolio.check.Examination.Row;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.Shown;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.UnitSystem;

/** What stands on each axle and on the plate, against what is permitted: met, not met or too close to tell. */
final class AxleMargins implements Figure {
    private static final double LABEL = 84;
    private static final double VALUE = 156;
    private static final double BAR = 164;
    private static final double MARGIN = 415;
    private static final double BOX = 421;
    /** The permitted mass stands here in every row, so that the eye runs down one line. */
    private static final double PERMITTED = 306;

    private static final double FURTHEST = 345;
    private static final double HEAD = 15;
    private static final double TITLE = 13;
    private static final double LINE = 13.5;
    private static final double GAP = 6;
    private static final double FOOT = 14;

    private final List<Group> groups;

    private AxleMargins(List<Group> groups) {
        this.groups = groups;
    }

    /** An axle or the whole car, with its permitted mass. */
    private record Group(String what, Value permitted, List<Bar> bars) {}

    /** The car in one state of loading. */
    private record Bar(String state, Value mass, Value margin, double limit, Verdict verdict) {
        String words() {
            return state + " " + mass.text() + ", margin " + margin.text() + ", " + verdict;
        }
    }

    static Optional<AxleMargins> of(Dossier dossier) {
        var groups = new ArrayList<Group>();
        for (Axle axle : Axle.values()) {
            group(
                            axle.toString(),
                            dossier.car().rating(axle),
                            Stream.of("axle-margin", "laden-axle-margin")
                                    .flatMap(check -> FindingRows.of(dossier, check))
                                    .filter(row -> row.finding().subject().startsWith(axle.toString())),
                            dossier.units())
                    .ifPresent(groups::add);
        }
        group(
                        "whole car",
                        dossier.car().grossRating(),
                        Stream.of("gross-margin", "laden-gross-margin", "seated-gross-margin")
                                .flatMap(check -> FindingRows.of(dossier, check)),
                        dossier.units())
                .ifPresent(groups::add);
        return groups.isEmpty() ? Optional.empty() : Optional.of(new AxleMargins(List.copyOf(groups)));
    }

    private static Optional<Group> group(String what, Term permitted, Stream<Row> rows, UnitSystem units) {
        List<Bar> bars = rows.flatMap(row -> bar(what, row, units).stream()).toList();
        return bars.isEmpty() ? Optional.empty() : Optional.of(new Group(what, Value.of(permitted, units), bars));
    }

    /** Only a margin that is known can be drawn. */
    private static Optional<Bar> bar(String what, Row row, UnitSystem units) {
        return row.finding()
                .working()
                .filter(working -> working.amount().isPresent())
                .map(working -> new Bar(
                        row.finding().subject().replace(what + ", ", ""),
                        Value.of(mass(working), units),
                        new Value(working, Shown.of(row.finding(), units)),
                        row.finding().limit().map(limit -> limit.value().si()).orElse(0.0),
                        row.verdict()));
    }

    private static Term mass(Working margin) {
        List<Term> masses = margin.inputs().get("m");
        if (masses == null) {
            throw new IllegalStateException("a margin without its mass");
        }
        return masses.get(0);
    }

    @Override
    public String id() {
        return "axle-margins";
    }

    @Override
    public String caption() {
        List<Bar> bars = groups.stream().flatMap(group -> group.bars().stream()).toList();
        List<String> failing = groups.stream()
                .flatMap(group -> group.bars().stream()
                        .filter(bar -> bar.verdict() == Verdict.NOT_MET)
                        .map(bar -> group.what() + ", " + bar.state() + " (over by "
                                + bar.margin().unsigned() + ")"))
                .toList();
        long near =
                bars.stream().filter(bar -> bar.verdict() == Verdict.UNDECIDED).count();
        String words = failing.isEmpty()
                ? "No mass drawn is beyond what is permitted."
                : "Not met: " + String.join("; ", failing) + ".";
        return words + (near == 0 ? "" : " Too close to tell: " + near + " of " + bars.size() + ".");
    }

    @Override
    public String alternative() {
        return groups.stream()
                .map(group -> "On the " + group.what() + ", permitted "
                        + group.permitted().text() + ": "
                        + group.bars().stream().map(Bar::words).collect(Collectors.joining("; ")) + ".")
                .collect(Collectors.joining(" "));
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return HEAD + bottom() + FOOT;
    }

    private double bottom() {
        return groups.stream()
                .mapToDouble(group -> TITLE + LINE * group.bars().size() + GAP)
                .sum();
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        pen.centred("permitted mass", PERMITTED, 7, Type.LABEL);
        pen.right("margin", MARGIN, 7, Type.LABEL);
        double y = HEAD;
        for (Group group : groups) {
            draw(pen, group, y);
            y += TITLE + LINE * group.bars().size() + GAP;
        }
        double foot = height() - 4;
        pen.hatch(0, foot - 6, 16, 7);
        pen.left(
                "and thin bars: expanded uncertainty, k = 2; a mass that lies in the hatched band reads undecided; "
                        + "bars are shares of what is permitted",
                20,
                foot,
                Type.NOTE);
    }

    private static void draw(Pen pen, Group group, double y) {
        pen.left(group.what() + ", permitted " + group.permitted().text(), 0, y + 8, Type.STRONG);
        double line = y + TITLE;
        for (Bar bar : group.bars()) {
            draw(pen, bar, group.permitted().si(), line);
            line += LINE;
        }
        pen.line(PERMITTED, y + TITLE - 2, PERMITTED, line, Line.FIRM, Pen.INK);
    }

    private static void draw(Pen pen, Bar bar, double permitted, double y) {
        double scale = permitted > 0 ? (PERMITTED - BAR) / permitted : 0;
        double end = Math.max(BAR, Math.min(FURTHEST, BAR + scale * bar.mass().si()));
        double guard = scale * bar.margin().reach();
        double reach = scale * bar.mass().reach();
        double limit = PERMITTED - scale * bar.limit();
        pen.left(pen.fitted(bar.state(), LABEL, Type.TEXT), 6, y + 7.6, Type.TEXT);
        pen.right(bar.mass().text(), VALUE, y + 7.6, Type.TEXT);
        boolean full = bar.state().equals("as delivered");
        double from = Math.max(BAR, limit - guard);
        double to = Math.min(FURTHEST, limit + guard);
        if (to > from) {
            pen.hatch(from, y - 0.5, to - from, LINE - 1);
        }
        pen.box(BAR, y + 2.5, end - BAR, LINE - 7, full ? Pen.ACCENT : Pen.PALE, Line.THIN);
        if (BAR + scale * bar.mass().si() > FURTHEST) {
            pen.cut(end - 8, y + 0.5, LINE - 3);
        } else {
            pen.whisker(Math.max(BAR, end - reach), Math.min(FURTHEST, end + reach), y + LINE / 2 - 1);
        }
        pen.right(bar.margin().text(), MARGIN, y + 7.6, Type.TEXT);
        verdict(pen, bar.verdict(), y);
    }

    /** Told by frame, ground and words, as on the page: dark for not met, dashed for what is open. */
    private static void verdict(Pen pen, Verdict verdict, double y) {
        boolean failed = verdict == Verdict.NOT_MET;
        boolean met = verdict == Verdict.MET;
        double width = Pen.WIDTH - BOX - 0.5;
        pen.box(BOX, y, width, LINE - 3, failed ? Pen.INK : Pen.WHITE, failed || met ? Line.THIN : Line.DASHED);
        if (failed) {
            pen.reversed(verdict.toString(), BOX + width / 2, y + 7.8, Type.STRONG);
        } else {
            boolean loud = met || verdict == Verdict.UNDECIDED;
            pen.centred(verdict.toString(), BOX + width / 2, y + 7.8, loud ? Type.STRONG : Type.TEXT);
        }
    }
}
