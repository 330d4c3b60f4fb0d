package kerbfolio.figure;

import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import kerbfolio.job.Role;

/** The plain signs of circuit diagrams, in the manner of IEC 60617; each lies in a conductor that runs along the figure. */
final class Signs {
    /** Length of a sign with its leads [pt]. */
    static final double LENGTH = 24;

    private static final double BODY = 14;
    private static final double HALF = 3;
    private static final double LEAD = (LENGTH - BODY) / 2;
    private static final double LIFT = 6;

    private Signs() {}

    /** The sign of a part that lies in a conductor, from its left end. */
    static void inLine(Pen pen, Role role, double x, double y) {
        double from = x + LEAD;
        double to = x + LENGTH - LEAD;
        pen.line(x, y, from, y, Line.THIN, Pen.INK);
        pen.line(to, y, x + LENGTH, y, Line.THIN, Pen.INK);
        switch (role) {
            case CONTACTOR -> {
                blade(pen, from, to, y);
                pen.outline(new Arc2D.Double(to - 4, y - 2, 4, 4, 0, 180, Arc2D.OPEN), Line.THIN, Pen.INK);
            }
            case DISCONNECT -> {
                blade(pen, from, to, y);
                pen.line(to, y - HALF, to, y + HALF, Line.FIRM, Pen.INK);
            }
            case CURRENT_SENSOR -> {
                pen.line(from, y, to, y, Line.THIN, Pen.INK);
                double middle = x + LENGTH / 2;
                pen.outline(new Ellipse2D.Double(middle - 4, y - 4, 8, 8), Line.THIN, Pen.INK);
            }
            default -> {
                var body = new Rectangle2D.Double(from, y - HALF, BODY, 2 * HALF);
                pen.fill(body, Pen.WHITE);
                pen.outline(body, Line.THIN, Pen.INK);
                if (role == Role.FUSE) {
                    pen.line(from, y, to, y, Line.THIN, Pen.INK);
                }
            }
        }
    }

    /** A contact that stands open. */
    private static void blade(Pen pen, double from, double to, double y) {
        pen.line(from, y, to - 2, y - LIFT, Line.THIN, Pen.INK);
    }

    /** A row of cells, plus above; the leads end at the right. */
    static void cells(Pen pen, double x, double plus, double minus, double right) {
        double middle = (plus + minus) / 2;
        pen.line(x, plus, right, plus, Line.THIN, Pen.INK);
        pen.line(x, minus, right, minus, Line.THIN, Pen.INK);
        pen.line(x, plus, x, middle - 5, Line.THIN, Pen.INK);
        pen.line(x, minus, x, middle + 5, Line.THIN, Pen.INK);
        for (double at : new double[] {middle - 5, middle + 2}) {
            pen.line(x - 7, at, x + 7, at, Line.THIN, Pen.INK);
            pen.line(x - 3.5, at + 3, x + 3.5, at + 3, Line.FIRM, Pen.INK);
        }
    }
}
