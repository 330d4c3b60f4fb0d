package kerbfolio.figure;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/**
 * How words get onto a canvas. A canvas that sets text itself, as the page does, needs nothing; a canvas that does not
 * carries its letters as a rendering hint.
 */
interface Letters {
    /** The hint under which a canvas carries its letters. */
    RenderingHints.Key KEY = new RenderingHints.Key(0) {
        @Override
        public boolean isCompatibleValue(Object value) {
            return value instanceof Letters;
        }
    };

    /** The canvas's own letters. */
    Letters OWN = new Letters() {
        @Override
        public double width(Graphics2D canvas, String words, Font font) {
            return canvas.getFontMetrics(font).getStringBounds(words, canvas).getWidth();
        }

        @Override
        public void set(Graphics2D canvas, String words, double x, double y, Font font) {
            canvas.setFont(font);
            canvas.drawString(words, (float) x, (float) y);
        }
    };

    /** Length of a line of words [pt]. */
    double width(Graphics2D canvas, String words, Font font);

    /** Sets words in the canvas's colour; (x, y) is the left end of their base line [pt]. */
    void set(Graphics2D canvas, String words, double x, double y, Font font);

    static Letters of(Graphics2D canvas) {
        return canvas.getRenderingHint(KEY) instanceof Letters letters ? letters : OWN;
    }
}
