package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfGState;
import com.lowagie.text.pdf.PdfGraphics2D;
import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.geom.AffineTransform;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The canvas a figure is drawn on: lines become PDF vectors, text stays text in the embedded faces and is measured by
 * them. The library's own text would be stretched to the widths of whatever font the machine has.
 */
final class FigureCanvas extends PdfGraphics2D {
    private static final float OPAQUE = 255f;

    private final float height;
    private final Fonts fonts;
    private final Lettering lettering;
    private @Nullable Font chosen;

    FigureCanvas(PdfContentByte target, float width, float height, Fonts fonts, Lettering lettering) {
        super(target, width, height, null, false, false, 1f);
        this.height = height;
        this.fonts = fonts;
        this.lettering = lettering;
    }

    private FigureCanvas(FigureCanvas parent) {
        super(parent);
        height = parent.height;
        fonts = parent.fonts;
        lettering = parent.lettering;
        chosen = parent.chosen;
    }

    @Override
    protected PdfGraphics2D createChild() {
        return new FigureCanvas(this);
    }

    @Override
    public void setFont(@Nullable Font font) {
        if (font != null) {
            chosen = font;
        }
    }

    @Override
    public Font getFont() {
        return Objects.requireNonNull(chosen, "the canvas begins with a font");
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return new EmbeddedMetrics(font, text(font));
    }

    private FigureText text(Font font) {
        return new FigureText(font, fonts, lettering);
    }

    @Override
    public void drawString(String words, float x, float y) {
        FigureText text = text(getFont());
        PdfContentByte target = getContent();
        target.saveState();
        target.setColorFill(opaque(getColor()));
        target.setGState(cover());
        target.beginText();
        for (FigureText.Stretch stretch : text.stretches(words)) {
            AffineTransform place = onPage(x, y, stretch.begin());
            target.setFontAndSize(stretch.face(), text.size());
            target.setTextMatrix(
                    (float) place.getScaleX(),
                    (float) place.getShearY(),
                    (float) place.getShearX(),
                    (float) place.getScaleY(),
                    (float) place.getTranslateX(),
                    (float) place.getTranslateY());
            target.showText(stretch.text());
        }
        target.endText();
        target.restoreState();
    }

    /** Java's y points down, the page's up. */
    private AffineTransform onPage(float x, float y, float along) {
        AffineTransform place = new AffineTransform(1, 0, 0, -1, 0, height);
        place.concatenate(getTransform());
        place.translate(x, y);
        place.concatenate(getFont().getTransform());
        place.translate(along, 0);
        place.scale(1, -1);
        return place;
    }

    private PdfGState cover() {
        float layer = getComposite() instanceof AlphaComposite alpha ? alpha.getAlpha() : 1;
        PdfGState state = new PdfGState();
        state.setFillOpacity(layer * getColor().getAlpha() / OPAQUE);
        return state;
    }

    private static Color opaque(Color color) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue());
    }
}
