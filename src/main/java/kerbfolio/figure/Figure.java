package kerbfolio.figure;

import java.awt.Graphics2D;

/**
 * One drawing of the dossier. It draws itself on whatever canvas it is given, so that the page and the workbook cannot
 * show different pictures.
 */
public interface Figure {
    /** The name by which a template asks for this drawing; unique in a dossier. */
    String id();

    /** What to see in the drawing, in one or two sentences. */
    String caption();

    /** The same in words, with every figure that is drawn, for a reader who cannot see the drawing. */
    String alternative();

    /** The width it is designed for, at which its smallest words are 7 pt high [pt]. */
    double width();

    /** The height that goes with that width [pt]. */
    double height();

    /**
     * Draws the whole figure into the rectangle from (0, 0) to (width, height), y pointing down. Its proportions are
     * kept; room left over stays free on both sides.
     *
     * @param canvas where to draw; the figure may change its colour, font, stroke and transform
     * @param width width of the rectangle [pt]
     * @param height height of the rectangle [pt]
     */
    void draw(Graphics2D canvas, double width, double height);
}
