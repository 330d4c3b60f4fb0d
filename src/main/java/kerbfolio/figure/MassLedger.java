package kerbfolio.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Ledger;
import kerbfolio.check.Examination;
import kerbfolio.dossier.Dossier;
import kerbfolio.figure.LedgerSide.Entry;

/** What came out to the left of zero, what went in to the right, and below it what the scales say. */
final class MassLedger implements Figure {
    private static final double ZERO = Pen.WIDTH / 2;
    /** The longest bar of a part, and how far it gives way to a long name [pt]. */
    private static final double LONGEST = 108;

    private static final double SHORTEST = 56;
    private static final double LONGEST_SUM = 130;
    private static final double GAP = 5;
    private static final double HEAD = 18;
    private static final double ROW = 12.5;
    private static final double SUMS = 46;

    private final LedgerSide removed;
    private final LedgerSide fitted;
    private final Value ledger;
    private final Value scales;
    private final String verdict;

    private MassLedger(Dossier dossier) {
        Ledger lines = dossier.car().ledger();
        removed = LedgerSide.of("taken out", lines.removed(), dossier.units());
        fitted = LedgerSide.of("fitted", lines.fitted(), dossier.units());
        ledger = Value.of(lines.change(), dossier.units());
        scales = Value.of(dossier.car().change(), dossier.units());
        verdict = FindingRows.of(dossier, "ledger-closure")
                .filter(row -> row.finding().subject().equals("whole car"))
                .map(Examination.Row::verdict)
                .map(Object::toString)
                .findFirst()
                .orElse("");
    }

    static Optional<MassLedger> of(Dossier dossier) {
        var figure = new MassLedger(dossier);
        return figure.entries().anyMatch(entry -> entry.mass().isKnown()) ? Optional.of(figure) : Optional.empty();
    }

    @Override
    public String id() {
        return "mass-ledger";
    }

    @Override
    public String caption() {
        return Words.sentences(
                "Largest mass recorded among " + Words.joined("; among ", removed.largest(), fitted.largest()) + ".",
                sums());
    }

    private String sums() {
        String words = Words.joined(" and ", sum("by its parts", ledger), sum("by the scales", scales));
        boolean isCompared = ledger.isKnown() && scales.isKnown() && !verdict.isEmpty();
        return words.isEmpty()
                ? ""
                : "The whole car changed " + words + (isCompared ? "; whether they agree: " + verdict : "") + ".";
    }

    private static String sum(String way, Value value) {
        return value.isKnown() ? "by " + value.signed() + " " + way : "";
    }

    @Override
    public String alternative() {
        return Words.sentences(removed.words(), fitted.words(), sums());
    }

    @Override
    public double width() {
        return Pen.WIDTH;
    }

    @Override
    public double height() {
        return bottom() + SUMS;
    }

    private double bottom() {
        return HEAD + ROW * Math.max(removed.entries().size(), fitted.entries().size()) + 2;
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        double most = most();
        double longest = longest(pen, most);
        double scale = longest / most;
        pen.right(removed.way(), ZERO - 5, 8, Type.LABEL);
        pen.left(fitted.way(), ZERO + 5, 8, Type.LABEL);
        side(pen, removed, -1, most, longest);
        side(pen, fitted, 1, most, longest);
        double y = bottom();
        pen.line(0, y + 3, Pen.WIDTH, y + 3, Line.HAIR, Pen.GREY);
        double own = Math.min(scale, LONGEST_SUM / Math.max(Double.MIN_NORMAL, reached()));
        sum(pen, "fitted less taken out", ledger, y + 7, own, true);
        sum(pen, "by the scales", scales, y + 7 + 1.3 * ROW, own, false);
        if (!verdict.isEmpty()) {
            pen.left("ledger against scales, whole car: " + verdict, 0, y + 43, Type.NOTE);
        }
        pen.right(
                (own < scale ? "sums to a scale of their own; " : "")
                        + "\u00b1 and the thin bar: expanded uncertainty, k = 2",
                Pen.WIDTH,
                y + 43,
                Type.NOTE);
        pen.line(ZERO, 0, ZERO, y + 7 + 2.4 * ROW, Line.FIRM, Pen.INK);
    }

    private Stream<Entry> entries() {
        return Stream.concat(removed.entries().stream(), fitted.entries().stream());
    }

    /** The largest single part, in SI: what is taken together would make stubs of all others. */
    private double most() {
        double most = entries()
                .filter(Entry::isSingle)
                .mapToDouble(entry -> entry.mass().si())
                .max()
                .orElse(0);
        return most > 0 ? most : reached() > 0 ? reached() : 1;
    }

    /** How far the sums reach from zero, with their uncertainty, in SI. */
    private double reached() {
        return Math.max(Math.abs(ledger.si()) + ledger.reach(), Math.abs(scales.si()) + scales.reach());
    }

    /** Length of the longest bar: what the names beside the bars leave of it [pt]. */
    private double longest(Pen pen, double most) {
        double longest = entries()
                .filter(entry -> entry.mass().si() > 0)
                .mapToDouble(entry -> (ZERO
                                - 3 * GAP
                                - pen.width(entry.label(most), Type.TEXT)
                                - pen.width(entry.mass().text(), Type.STRONG))
                        * Math.max(1, most / entry.mass().si()))
                .min()
                .orElse(LONGEST);
        return Math.max(SHORTEST, Math.min(LONGEST, longest));
    }

    private static void side(Pen pen, LedgerSide side, int way, double most, double longest) {
        double y = HEAD;
        for (Entry entry : side.entries()) {
            double length = longest * entry.share(most);
            if (entry.mass().isKnown()) {
                bar(pen, entry, way < 0 ? ZERO - length : ZERO, y, length, way < 0);
            }
            double room = ZERO - length - GAP;
            String mass = pen.fitted(entry.mass().text(), room, Type.STRONG);
            double taken = pen.width(mass, Type.STRONG) + GAP;
            String name = pen.fitted(entry.label(most), room - taken - 1, Type.TEXT);
            if (way < 0) {
                pen.right(mass, ZERO - length - GAP, y + 7.2, Type.STRONG);
                pen.right(name, ZERO - length - GAP - taken, y + 7.2, Type.TEXT);
            } else {
                pen.left(mass, ZERO + length + GAP, y + 7.2, Type.STRONG);
                pen.left(name, ZERO + length + GAP + taken, y + 7.2, Type.TEXT);
            }
            y += ROW;
        }
    }

    /** What is taken together is no part: its bar is dashed and empty. */
    private static void bar(Pen pen, Entry entry, double x, double y, double length, boolean isRemoved) {
        if (!entry.isSingle()) {
            pen.outline(new Rectangle2D.Double(x, y, length, ROW - 4), Line.DASHED, Pen.INK);
            return;
        }
        pen.box(x, y, length, ROW - 4, isRemoved ? Pen.WHITE : Pen.ACCENT, Line.THIN);
        if (isRemoved) {
            pen.hatch(x, y, length, ROW - 4);
        }
    }

    private static void sum(Pen pen, String label, Value value, double y, double scale, boolean full) {
        boolean left = value.si() < 0;
        double end = ZERO + scale * value.si();
        double reach = scale * value.reach();
        if (value.isKnown()) {
            pen.box(Math.min(ZERO, end), y, Math.abs(end - ZERO), ROW - 3, full ? Pen.PALE : Pen.GREY, Line.THIN);
            pen.whisker(end - reach, end + reach, y + (ROW - 3) / 2);
        }
        String words = value.isKnown() ? value.signed() : "not known";
        Type type = value.isKnown() ? Type.LOUD : Type.NOTE;
        double outer = Math.abs(end - ZERO) + reach + 6;
        if (left) {
            pen.right(words, ZERO - outer, y + 8.2, type);
            pen.left(label, ZERO + reach + 6, y + 7.6, Type.TEXT);
        } else {
            pen.left(words, ZERO + outer, y + 8.2, type);
            pen.right(label, ZERO - reach - 6, y + 7.6, Type.TEXT);
        }
    }
}
