package kerbfolio.pdf;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.xhtmlrenderer.pdf.FontFamily;
import org.xhtmlrenderer.pdf.ITextFontResolver;

/**
 * The families a style sheet can name: the two bundled ones, and the generic names, which all mean the text face. The
 * engine falls back to "Serif" for any other name, so nothing can be set in a face that is not embedded.
 */
final class PageFonts extends ITextFontResolver {
    private static final List<String> GENERIC = List.of("Serif", "SansSerif", "Monospaced");

    PageFonts(Fonts fonts) {
        Face.TEXT.forEach(face -> addFont(fonts.of(face), face.file(), Fonts.TEXT));
        Face.SYMBOLS.forEach(face -> addFont(fonts.of(face), face.file(), Fonts.SYMBOLS));
        FontFamily text = getFonts().get(Fonts.TEXT);
        if (text == null) {
            throw new IllegalStateException("the text face was not taken");
        }
        GENERIC.forEach(name -> getFonts().put(name, text));
    }

    /** None of the fourteen standard fonts, which are never embedded. */
    @Override
    protected Map<String, FontFamily> loadFonts() {
        return new HashMap<>();
    }
}
