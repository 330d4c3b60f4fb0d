package kerbfolio.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.geom.Rectangle2D;

/**
 * The measures of the face a figure's text is really printed in, so that a drawing does not come out differently on a
 * machine with other fonts, or none.
 */
final class EmbeddedMetrics extends FontMetrics {
    private static final long serialVersionUID = 1;

    private final transient FigureText text;

    EmbeddedMetrics(Font font, FigureText text) {
        super(font);
        this.text = text;
    }

    @Override
    public int getAscent() {
        return Math.round(text.measure(BaseFont.AWT_ASCENT));
    }

    @Override
    public int getDescent() {
        return Math.round(-text.measure(BaseFont.AWT_DESCENT));
    }

    @Override
    public int getLeading() {
        return 0;
    }

    @Override
    public int charWidth(int character) {
        return stringWidth(Character.toString(character));
    }

    @Override
    public int charWidth(char character) {
        return stringWidth(Character.toString(character));
    }

    @Override
    public int charsWidth(char[] characters, int from, int count) {
        return stringWidth(new String(characters, from, count));
    }

    @Override
    public int stringWidth(String words) {
        return Math.round(text.width(words));
    }

    @Override
    public Rectangle2D getStringBounds(String words, Graphics canvas) {
        float ascent = text.measure(BaseFont.AWT_ASCENT);
        float descent = -text.measure(BaseFont.AWT_DESCENT);
        return new Rectangle2D.Float(0, -ascent, text.width(words), ascent + descent);
    }

    @Override
    public Rectangle2D getStringBounds(String words, int from, int to, Graphics canvas) {
        return getStringBounds(words.substring(from, to), canvas);
    }
}
