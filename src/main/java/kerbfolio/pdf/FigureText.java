package kerbfolio.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** One font of a figure, matched to the embedded faces: bold and italic count, the family does not. */
final class FigureText {
    private final Fonts fonts;
    private final Lettering lettering;
    private final boolean bold;
    private final boolean italic;
    private final float size;

    FigureText(Font font, Fonts fonts, Lettering lettering) {
        this.fonts = fonts;
        this.lettering = lettering;
        String name = font.getName().toLowerCase(Locale.ROOT);
        bold = font.isBold() || name.contains("bold");
        italic = font.isItalic() || name.contains("italic") || name.contains("oblique");
        size = font.getSize2D();
    }

    /** Text in one face, and where it begins along the line. */
    record Stretch(String text, BaseFont face, float begin) {}

    List<Stretch> stretches(String words) {
        List<Stretch> stretches = new ArrayList<>();
        float begin = 0;
        for (Lettering.Run run : lettering.runs(words)) {
            BaseFont face = fonts.of(run.symbol() ? Face.symbol(bold) : Face.text(bold, italic));
            stretches.add(new Stretch(run.text(), face, begin));
            begin += face.getWidthPoint(run.text(), size);
        }
        return stretches;
    }

    float width(String words) {
        float width = 0;
        for (Stretch stretch : stretches(words)) {
            width = stretch.begin() + stretch.face().getWidthPoint(stretch.text(), size);
        }
        return width;
    }

    /** A measure of the text face by the library's own key, at this font's size [pt]. */
    float measure(int key) {
        return fonts.of(Face.text(bold, italic)).getFontDescriptor(key, size);
    }

    float size() {
        return size;
    }
}
