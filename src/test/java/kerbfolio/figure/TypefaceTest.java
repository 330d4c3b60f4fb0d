package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.io.InputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypefaceTest {
    private static final String REGULAR = "liberation/LiberationSans-Regular.ttf";
    private static final String SIGNS = "net/sf/jasperreports/fonts/dejavu/DejaVuSans.ttf";

    /** Liberation Sans has the widths of Helvetica: A 667, i 222, 0 and ± 556 and 584, at sign 1015 of 1000 (Adobe core AFM). */
    @Test
    void lettersAreAsWideAsTheirModels() {
        Typeface face = Typeface.bundled(REGULAR);
        assertEquals(0.667, face.advance('A'), 5e-4);
        assertEquals(0.222, face.advance('i'), 5e-4);
        assertEquals(0.556, face.advance('0'), 5e-4);
        assertEquals(0.584, face.advance('+'), 5e-4);
        assertEquals(1.015, face.advance('@'), 5e-4);
    }

    @Test
    void aFaceSaysWhatItLacks() {
        assertTrue(Typeface.bundled(REGULAR).has('\u00b1'));
        assertFalse(Typeface.bundled(REGULAR).has('\u2610'));
        assertTrue(Typeface.bundled(SIGNS).has('\u2610'));
        assertFalse(Typeface.bundled(SIGNS).has('\u4e2d'));
        assertFalse(Typeface.bundled(SIGNS).has(0x1F44D));
    }

    @Test
    void aSpaceHasNoOutline() {
        assertTrue(Typeface.bundled(REGULAR).outline(' ').getPathIterator(null).isDone());
    }

    /** The language's own reading of the same file, by another program (FreeType), at the size of its grid. */
    @ParameterizedTest
    @ValueSource(strings = {REGULAR, "liberation/LiberationSans-BoldItalic.ttf", SIGNS})
    void outlinesAreThoseOfTheLanguagesOwnFonts(String name) {
        Font own = own(name);
        Typeface face = Typeface.bundled(name);
        var exact = new FontRenderContext(null, true, true);
        for (char letter : "AgQ8%±é²°Ωö…→−&@ŁçǺ".toCharArray()) {
            var vector = own.createGlyphVector(exact, new char[] {letter});
            Shape expected = vector.getOutline();
            Shape read = AffineTransform.getScaleInstance(2048, 2048).createTransformedShape(face.outline(letter));
            Rectangle2D frame = expected.getBounds2D();
            Rectangle2D found = read.getBounds2D();
            assertEquals(frame.getX(), found.getX(), 2, () -> name + " " + letter);
            assertEquals(frame.getY(), found.getY(), 2, () -> name + " " + letter);
            assertEquals(frame.getWidth(), found.getWidth(), 3, () -> name + " " + letter);
            assertEquals(frame.getHeight(), found.getHeight(), 3, () -> name + " " + letter);
            var difference = new Area(expected);
            difference.exclusiveOr(new Area(read));
            assertTrue(size(difference) < 0.004 * size(new Area(expected)), () -> name + " " + letter);
            assertEquals(vector.getGlyphMetrics(0).getAdvanceX(), 2048 * face.advance(letter), 1.5);
        }
    }

    private static Font own(String name) {
        try (InputStream in = TypefaceTest.class.getClassLoader().getResourceAsStream(name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in).deriveFont(2048f);
        } catch (Exception | LinkageError | InternalError e) {
            return abort("this machine has no fonts to compare with: " + e);
        }
    }

    /** The area within a shape, by the shoelace formula over its flattened edges. */
    private static double size(Area area) {
        double sum = 0;
        double[] at = new double[6];
        double startX = 0;
        double startY = 0;
        double x = 0;
        double y = 0;
        for (PathIterator edges = area.getPathIterator(null, 0.05); !edges.isDone(); edges.next()) {
            int kind = edges.currentSegment(at);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = at[0];
                startY = at[1];
            } else {
                double toX = kind == PathIterator.SEG_CLOSE ? startX : at[0];
                double toY = kind == PathIterator.SEG_CLOSE ? startY : at[1];
                sum += x * toY - toX * y;
                at[0] = toX;
                at[1] = toY;
            }
            x = at[0];
            y = at[1];
        }
        return Math.abs(sum) / 2;
    }

    @Test
    void aLetterNoFaceHasIsSetAsItsCode() {
        var letters = new Outlines();
        Font font = Type.TEXT.font();
        assertEquals(letters.width(null, "[U+4E2D]", font), letters.width(null, "\u4e2d", font), 1e-9);
    }
}
