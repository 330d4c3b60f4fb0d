package kerbfolio.figure;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Ledger;
import kerbfolio.check.Examination;
import kerbfolio.dossier.Dossier;
import kerbfolio.quantity.UnitSystem;

/** What came out to the left of zero, what went in to the right, and below it what the scales say. */
final class MassLedger implements Figure {
    private static final int MOST_ROWS = 9;
    private static final double ZERO = Pen.WIDTH / 2;
    private static final double LONGEST = 108;
    private static final double HEAD = 18;
    private static final double ROW = 12.5;
    private static final double SUMS = 46;
    private static final int LONGEST_NAME = 60;

    private final List<Entry> removed;
    private final List<Entry> fitted;
    private final Value ledger;
    private final Value scales;
    private final String verdict;

    private MassLedger(Dossier dossier) {
        Ledger lines = dossier.car().ledger();
        removed = entries(lines.removed(), dossier.units());
        fitted = entries(lines.fitted(), dossier.units());
        ledger = Value.of(lines.change(), dossier.units());
        scales = Value.of(dossier.car().change(), dossier.units());
        verdict = FindingRows.of(dossier, "ledger-closure")
                .filter(row -> row.finding().subject().equals("whole car"))
                .map(Examination.Row::verdict)
                .map(Object::toString)
                .findFirst()
                .orElse("");
    }

    /** A part, or several small ones together. */
    private record Entry(String name, Value mass) {
        String words() {
            return shortened(name) + " " + mass.text();
        }
    }

    static Optional<MassLedger> of(Dossier dossier) {
        var figure = new MassLedger(dossier);
        return Stream.concat(figure.removed.stream(), figure.fitted.stream())
                        .anyMatch(entry -> entry.mass().isKnown())
                ? Optional.of(figure)
                : Optional.empty();
    }

    /** Largest first; what no row is left for is taken together. */
    private static List<Entry> entries(List<Ledger.Line> lines, UnitSystem units) {
        List<Ledger.Line> sorted = lines.stream()
                .sorted(Comparator.comparingDouble(
                        line -> -Value.of(line.mass(), units).si()))
                .toList();
        int alone = sorted.size() <= MOST_ROWS ? sorted.size() : MOST_ROWS - 1;
        var entries = new ArrayList<Entry>();
        for (Ledger.Line line : sorted.subList(0, alone)) {
            entries.add(new Entry(line.name(), Value.of(line.mass(), units)));
        }
        if (alone < sorted.size()) {
            List<Ledger.Line> small = sorted.subList(alone, sorted.size());
            entries.add(new Entry(small.size() + " smaller parts", Value.of(Ledger.together(small), units)));
        }
        return List.copyOf(entries);
    }

    private static String shortened(String name) {
        String clean = Pen.clean(name);
        return clean.codePointCount(0, clean.length()) <= LONGEST_NAME
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST_NAME)) + "\u2026";
    }

    @Override
    public String id() {
        return "mass-ledger";
    }

    @Override
    public String caption() {
        String heaviest = Stream.of(largest(removed, "out: "), largest(fitted, "in: "))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; ", "The heaviest things ", ". "));
        return heaviest + sums();
    }

    private static String largest(List<Entry> entries, String way) {
        return entries.stream()
                .findFirst()
                .filter(entry -> entry.mass().isKnown())
                .map(entry -> way + entry.words())
                .orElse("");
    }

    private String sums() {
        return "The whole car changed by "
                + (ledger.isKnown() ? ledger.signed() : "an amount not known") + " by its parts and by "
                + (scales.isKnown() ? scales.signed() : "an amount not known") + " by the scales"
                + (verdict.isEmpty() ? "." : "; whether they agree: " + verdict + ".");
    }

    @Override
    public String alternative() {
        return "Taken out, largest first: " + words(removed) + ". Fitted, largest first: " + words(fitted) + ". "
                + sums();
    }

    private static String words(List<Entry> entries) {
        return entries.isEmpty()
                ? "nothing recorded"
                : entries.stream().map(Entry::words).collect(Collectors.joining("; "));
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
        return HEAD + ROW * Math.max(removed.size(), fitted.size()) + 2;
    }

    @Override
    public void draw(Graphics2D canvas, double width, double height) {
        Pen pen = Pen.on(canvas, width, height, this);
        double scale = LONGEST / most();
        pen.right("taken out", ZERO - 5, 8, Type.LABEL);
        pen.left("fitted", ZERO + 5, 8, Type.LABEL);
        side(pen, removed, -1, scale);
        side(pen, fitted, 1, scale);
        double y = bottom();
        pen.line(0, y + 3, Pen.WIDTH, y + 3, Line.HAIR, Pen.GREY);
        sum(pen, "fitted less taken out", ledger, y + 7, scale, true);
        sum(pen, "by the scales", scales, y + 7 + 1.3 * ROW, scale, false);
        if (!verdict.isEmpty()) {
            pen.left("ledger against scales, whole car: " + verdict, 0, y + 43, Type.NOTE);
        }
        pen.right("\u00b1 and the thin bar: expanded uncertainty, k = 2", Pen.WIDTH, y + 43, Type.NOTE);
        pen.line(ZERO, 0, ZERO, y + 7 + 2.4 * ROW, Line.FIRM, Pen.INK);
    }

    private double most() {
        double most = Stream.of(
                        removed.stream().map(Entry::mass), fitted.stream().map(Entry::mass), Stream.of(ledger, scales))
                .flatMap(values -> values)
                .mapToDouble(value -> Math.abs(value.si()) + value.reach())
                .max()
                .orElse(0);
        return most > 0 ? most : 1;
    }

    private static void side(Pen pen, List<Entry> entries, int way, double scale) {
        double y = HEAD;
        for (Entry entry : entries) {
            double length = scale * Math.max(0, entry.mass().si());
            if (entry.mass().isKnown()) {
                double x = way < 0 ? ZERO - length : ZERO;
                pen.box(x, y, length, ROW - 4, way < 0 ? Pen.WHITE : Pen.ACCENT, Line.THIN);
                if (way < 0) {
                    pen.hatch(x, y, length, ROW - 4);
                }
            }
            double room = ZERO - length - 6;
            String mass = pen.fitted(entry.mass().text(), room, Type.STRONG);
            double taken = pen.width(mass, Type.STRONG) + 5;
            String name = pen.fitted(entry.name(), room - taken, Type.TEXT);
            if (way < 0) {
                pen.right(mass, ZERO - length - 5, y + 7.2, Type.STRONG);
                pen.right(name, ZERO - length - 5 - taken, y + 7.2, Type.TEXT);
            } else {
                pen.left(mass, ZERO + length + 5, y + 7.2, Type.STRONG);
                pen.left(name, ZERO + length + 5 + taken, y + 7.2, Type.TEXT);
            }
            y += ROW;
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
        String words = value.isKnown() ? value.signed() : "not known: something is not recorded";
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
