package kerbfolio.pdf;

import com.lowagie.text.pdf.BaseFont;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.xhtmlrenderer.pdf.ITextFSFont;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.FSFont;
import org.xhtmlrenderer.render.JustificationInfo;

/**
 * Puts the text on paper and looks at each string a last time: what a style sheet itself adds (content before and
 * after, page margins) has not passed the marking of the page, and a sign lost there is noticed here.
 */
final class PageInk extends ITextOutputDevice {
    private final Set<String> lost = new LinkedHashSet<>();
    private @Nullable BaseFont face;

    PageInk(float dotsPerPoint) {
        super(dotsPerPoint);
    }

    @Override
    public void setFont(FSFont font) {
        super.setFont(font);
        face = ((ITextFSFont) font).getFontDescription().getFont();
    }

    @Override
    public void drawString(String text, float x, float y, @Nullable JustificationInfo spread) {
        BaseFont used = face;
        if (used != null) {
            text.codePoints()
                    .filter(c -> !used.charExists(c))
                    .forEach(c -> lost.add("the style sheet prints \"" + text + "\" in a face without "
                            + "U+%04X; it needs font-family: \"%s\"".formatted(c, Fonts.SYMBOLS)));
        }
        // The engine spreads a justified line char by char and would tear a surrogate pair.
        super.drawString(text, x, y, text.codePoints().anyMatch(Character::isSupplementaryCodePoint) ? null : spread);
    }

    List<String> complaints() {
        return List.copyOf(lost);
    }
}
