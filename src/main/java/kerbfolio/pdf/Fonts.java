package kerbfolio.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

/**
 * The faces of the printed page: a calm one for text, and one that has the signs the text face lacks (boxes, ticks,
 * warning triangle). Both are bundled and always embedded, so a page looks the same on every machine. Load them once;
 * use them from one thread at a time.
 */
public final class Fonts {
    /** Family name of the text face, as a style sheet writes it. */
    public static final String TEXT = "Liberation Sans";

    /** Family name of the face that has the signs. */
    public static final String SYMBOLS = "DejaVu Sans";

    private final Map<Face, BaseFont> faces = new EnumMap<>(Face.class);

    /** What was found of a character once: a page asks for few of them, and often. */
    private final Map<Integer, Boolean> text = new HashMap<>();

    private final Map<Integer, Boolean> symbols = new HashMap<>();

    private Fonts() {
        for (Face face : Face.values()) {
            faces.put(face, read(face));
        }
    }

    /** Reads the bundled faces. */
    public static Fonts load() {
        return new Fonts();
    }

    BaseFont of(Face face) {
        BaseFont font = faces.get(face);
        if (font == null) {
            throw new IllegalStateException("face not loaded: " + face);
        }
        return font;
    }

    /** Whether every cut of the text face has the character. */
    boolean textHas(int character) {
        return text.computeIfAbsent(character, c -> Face.TEXT.stream().allMatch(face -> of(face).charExists(c)));
    }

    /** Whether every cut of the symbol face has the character. */
    boolean symbolsHave(int character) {
        return symbols.computeIfAbsent(character, c -> Face.SYMBOLS.stream().allMatch(face -> of(face).charExists(c)));
    }

    private static BaseFont read(Face face) {
        try (InputStream file = Fonts.class.getClassLoader().getResourceAsStream(face.file())) {
            if (file == null) {
                throw new IllegalStateException("font missing from the program: " + face.file());
            }
            BaseFont font = BaseFont.createFont(
                    face.file(),
                    BaseFont.IDENTITY_H,
                    BaseFont.EMBEDDED,
                    BaseFont.NOT_CACHED,
                    file.readAllBytes(),
                    null);
            font.setIncludeCidSet(false);
            font.setSecureRandom(new SubsetTag(face));
            return font;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (DocumentException e) {
            throw new IllegalStateException("font cannot be read: " + face.file(), e);
        }
    }

    /**
     * Draws the six letters that mark an embedded subset (ISO 32000-1, 9.6.4) always alike, one letter for each face;
     * the library would roll dice and no two prints of a dossier would be equal.
     */
    private static final class SubsetTag extends SecureRandom {
        private static final long serialVersionUID = 1;
        private static final double LETTERS = 26;

        private final double draw;

        SubsetTag(Face face) {
            draw = (face.letter() - 'A' + 0.5) / LETTERS;
        }

        @Override
        public double nextDouble() {
            return draw;
        }
    }
}
