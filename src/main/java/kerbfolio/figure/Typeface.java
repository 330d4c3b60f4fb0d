package kerbfolio.figure;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The letters of a bundled TrueType file as outlines. The language's own fonts need a font server, a font library of the
 * system and font files of the machine, and their outlines need not be the same from one machine to the next.
 */
final class Typeface {
    private final TrueTypeFont font;
    private final CmapLookup letters;
    private final double em;

    private Typeface(TrueTypeFont font) throws IOException {
        this.font = font;
        this.letters = font.getUnicodeCmapLookup();
        this.em = font.getUnitsPerEm();
    }

    /** A face that lies on the class path. */
    static Typeface bundled(String name) {
        try (InputStream in = Typeface.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("font missing from the program: " + name);
            }
            return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean has(int character) {
        return letters.getGlyphId(character) != 0;
    }

    /** Room the letter takes along the line, in units of the type size. */
    double advance(int character) {
        try {
            return font.getAdvanceWidth(letters.getGlyphId(character)) / em;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The outline at type size 1, on the base line, y pointing down. */
    Path2D outline(int character) {
        try {
            var glyph = font.getGlyph().getGlyph(letters.getGlyphId(character));
            Path2D path = new Path2D.Double();
            if (glyph != null) {
                path.append(glyph.getPath().getPathIterator(AffineTransform.getScaleInstance(1 / em, -1 / em)), false);
            }
            return path;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
