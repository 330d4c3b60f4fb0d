package kerbfolio.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.text.Normalizer;

/** Lines, areas and words in the few looks that all figures share. Lengths are points; nothing is told by colour alone. */
final class Pen {
    /** Width of every figure: the text of an A4 page, 174 mm [pt]. */
    static final double WIDTH = 493;

    /** The most a page has room for below a heading and above a caption [pt]. */
    static final double TALLEST = 620;

    /** What the caption of a taller figure says. */
    static final String SHRUNK = "Drawn smaller to fit the page.";

    static final Color INK = new Color(0x1b2229);
    static final Color ACCENT = new Color(0x1f4e5f);
    static final Color GREY = new Color(0x4a5560);
    static final Color PALE = new Color(0xe6e9eb);
    static final Color FAINT = new Color(0xf4f6f7);
    static final Color WHITE = Color.WHITE;

    private static final double ARROW = 4.5;
    private static final double SLIM = 1.5;
    private static final double FLAT = 0.01;
    private static final double HATCH = 2.6;
    private static final double CAP = 2.4;
    private static final double RING = 5.6;
    private static final double QUARTER = 90;
    private static final double MARK = 4.2;
    private static final String CUT = "\u2026";

    private final Graphics2D canvas;
    private final Letters letters;

    private Pen(Graphics2D canvas) {
        this.canvas = canvas;
        this.letters = Letters.of(canvas);
    }

    /** A pen that draws in the figure's own measures, fitted into the room there is. */
    static Pen on(Graphics2D canvas, double width, double height, Figure figure) {
        double scale = Math.min(width / figure.width(), height / figure.height());
        canvas.translate((width - scale * figure.width()) / 2, (height - scale * figure.height()) / 2);
        canvas.scale(scale, scale);
        return new Pen(canvas);
    }

    /** The same for a figure that is taller than its page: what is drawn in its full height comes out smaller. */
    static Pen on(Graphics2D canvas, double width, double height, Figure figure, double full) {
        Pen pen = on(canvas, width, height, figure);
        double smaller = Math.min(1, figure.height() / full);
        canvas.translate((1 - smaller) * figure.width() / 2, 0);
        canvas.scale(smaller, smaller);
        return pen;
    }

    double width(String words, Type type) {
        return letters.width(canvas, clean(words), type.font());
    }

    void left(String words, double x, double y, Type type) {
        canvas.setColor(type.colour());
        letters.set(canvas, clean(words), x, y, type.font());
    }

    void right(String words, double x, double y, Type type) {
        left(words, x - width(words, type), y, type);
    }

    void centred(String words, double x, double y, Type type) {
        left(words, x - width(words, type) / 2, y, type);
    }

    /** White words on a dark ground. */
    void reversed(String words, double x, double y, Type type) {
        canvas.setColor(WHITE);
        letters.set(canvas, clean(words), x - width(words, type) / 2, y, type.font());
    }

    /** Words that lie over lines, with the lines kept away from them. */
    void over(String words, double x, double y, Type type) {
        double width = width(words, type);
        double size = type.size();
        fill(new Rectangle2D.Double(x - width / 2 - 2, y - size, width + 4, size * 1.3), WHITE);
        centred(words, x, y, type);
    }

    /** Words that fit the room, cut with an ellipsis where they must be. */
    String fitted(String words, double room, Type type) {
        String whole = clean(words);
        if (width(whole, type) <= room) {
            return whole;
        }
        int fits = 0;
        int beyond = whole.codePointCount(0, whole.length());
        while (beyond - fits > 1) {
            int middle = (fits + beyond) / 2;
            if (width(first(whole, middle) + CUT, type) <= room) {
                fits = middle;
            } else {
                beyond = middle;
            }
        }
        return first(whole, fits) + CUT;
    }

    private static String first(String words, int count) {
        return words.substring(0, words.offsetByCodePoints(0, count)).stripTrailing();
    }

    /** Text on one line; a control character becomes the sign for an unprintable one. */
    static String clean(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFC)
                .replaceAll("[\\s\\p{Zl}\\p{Zp}&&[^\u00a0]]+", " ")
                .replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\uFFFE\uFFFF]", "\uFFFD");
    }

    void line(double x1, double y1, double x2, double y2, Line line, Color colour) {
        outline(new Line2D.Double(x1, y1, x2, y2), line, colour);
    }

    /** Curves become short straight lines, which every version of the language draws alike. */
    void outline(Shape shape, Line line, Color colour) {
        var straight = new Path2D.Double();
        straight.append(shape.getPathIterator(null, FLAT), false);
        canvas.setStroke(line.stroke());
        canvas.setColor(colour);
        canvas.draw(straight);
    }

    void fill(Shape shape, Color colour) {
        canvas.setColor(colour);
        canvas.fill(shape);
    }

    void box(double x, double y, double width, double height, Color ground, Line line) {
        var box = new Rectangle2D.Double(x, y, width, height);
        fill(box, ground);
        outline(box, line, INK);
    }

    /** Slanted lines over a rectangle, without its edges. */
    void hatch(double x, double y, double width, double height) {
        for (double c = HATCH / 2; c < width + height; c += HATCH) {
            line(
                    x + Math.max(0, c - height),
                    y + Math.min(height, c),
                    x + Math.min(width, c),
                    y + Math.max(0, c - width),
                    Line.HAIR,
                    INK);
        }
    }

    /** A cut through a bar that is longer than there is room. */
    void cut(double x, double y, double height) {
        for (double at = x; at < x + 3; at += 2) {
            line(at, y + height, at + 3, y, Line.FIRM, WHITE);
        }
    }

    /** A bar of uncertainty along the figure. */
    void whisker(double from, double to, double y) {
        line(from, y, to, y, Line.THIN, INK);
        line(from, y - CAP, from, y + CAP, Line.THIN, INK);
        line(to, y - CAP, to, y + CAP, Line.THIN, INK);
    }

    /** A bar of uncertainty up and down the figure. */
    void upright(double x, double from, double to) {
        line(x, from, x, to, Line.THIN, INK);
        line(x - CAP, from, x + CAP, from, Line.THIN, INK);
        line(x - CAP, to, x + CAP, to, Line.THIN, INK);
    }

    /** A line with a head at its end. */
    void arrow(double x1, double y1, double x2, double y2) {
        line(x1, y1, x2, y2, Line.THIN, INK);
        head(x1, y1, x2, y2);
    }

    /** A dimension: a line with a head at either end. */
    void dimension(double x1, double y1, double x2, double y2) {
        line(x1, y1, x2, y2, Line.HAIR, INK);
        if (Math.hypot(x2 - x1, y2 - y1) > 2 * ARROW) {
            head(x1, y1, x2, y2);
            head(x2, y2, x1, y1);
        }
    }

    private void head(double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double along = (x2 - x1) / length;
        double aside = (y2 - y1) / length;
        var head = new Path2D.Double();
        head.moveTo(x2, y2);
        head.lineTo(x2 - ARROW * along - SLIM * aside, y2 - ARROW * aside + SLIM * along);
        head.lineTo(x2 - ARROW * along + SLIM * aside, y2 - ARROW * aside - SLIM * along);
        head.closePath();
        fill(head, INK);
    }

    /**
     * The mark of a centre of gravity: a ring with a cross before the work, with two dark quarters after it. The first is
     * wider, so that it is seen where both lie in one place.
     */
    void centre(double x, double y, boolean after) {
        double half = after ? MARK : RING;
        var ring = new Ellipse2D.Double(x - half, y - half, 2 * half, 2 * half);
        fill(ring, WHITE);
        if (after) {
            fill(new Arc2D.Double(ring.getBounds2D(), 0, QUARTER, Arc2D.PIE), INK);
            fill(new Arc2D.Double(ring.getBounds2D(), 2 * QUARTER, QUARTER, Arc2D.PIE), INK);
        } else {
            line(x - half, y, x + half, y, Line.HAIR, INK);
            line(x, y - half, x, y + half, Line.HAIR, INK);
        }
        outline(ring, Line.THIN, INK);
    }
}
