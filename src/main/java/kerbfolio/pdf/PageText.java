package kerbfolio.pdf;

import com.lowagie.text.pdf.BaseFont;
import org.xhtmlrenderer.extend.FontContext;
import org.xhtmlrenderer.pdf.ITextFSFontMetrics;
import org.xhtmlrenderer.pdf.ITextTextRenderer;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.FSFontMetrics;

/**
 * Measures every line by the text face. The engine would take the bounding box of each face, which is a third too high
 * and lets a line with a sign in it stand apart from its neighbours.
 */
final class PageText extends ITextTextRenderer {
    private final BaseFont face;

    PageText(Fonts fonts) {
        face = fonts.of(Face.REGULAR);
    }

    @Override
    public FSFontMetrics getFSFontMetrics(FontContext context, FSFont font, String text) {
        float size = font.getSize2D();
        return new ITextFSFontMetrics(
                face.getFontDescriptor(BaseFont.AWT_ASCENT, size),
                -face.getFontDescriptor(BaseFont.AWT_DESCENT, size),
                -face.getFontDescriptor(BaseFont.STRIKETHROUGH_POSITION, size),
                face.getFontDescriptor(BaseFont.STRIKETHROUGH_THICKNESS, size),
                -face.getFontDescriptor(BaseFont.UNDERLINE_POSITION, size),
                face.getFontDescriptor(BaseFont.UNDERLINE_THICKNESS, size));
    }
}
