package kerbfolio.figure;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.util.HashMap;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;

/**
 * Letters filled as outlines of the bundled faces, without any font of the machine: the same faces as on the page, the
 * one with the signs where the text face lacks a letter, and the code of a letter that neither has.
 */
final class Outlines implements Letters {
    private static final String TEXT = "liberation/LiberationSans-";
    private static final String SIGNS = "net/sf/jasperreports/fonts/dejavu/DejaVuSans";

    private final Map<String, Typeface> faces = new HashMap<>();

    @Override
    public double width(Graphics2D canvas, String words, Font font) {
        return run(words, font, (face, letter) -> {});
    }

    @Override
    public void set(Graphics2D canvas, String words, double x, double y, Font font) {
        double[] at = {x};
        float size = font.getSize2D();
        run(words, font, (face, letter) -> {
            var place = new AffineTransform(size, 0, 0, size, at[0], y);
            canvas.fill(place.createTransformedShape(face.outline(letter)));
            at[0] += size * face.advance(letter);
        });
    }

    private double run(String words, Font font, BiConsumer<Typeface, Integer> letters) {
        double width = 0;
        for (int letter : words.codePoints().flatMap(c -> printed(c, font)).toArray()) {
            Typeface face = face(letter, font);
            letters.accept(face, letter);
            width += font.getSize2D() * face.advance(letter);
        }
        return width;
    }

    private IntStream printed(int letter, Font font) {
        return text(font).has(letter) || signs(font).has(letter)
                ? IntStream.of(letter)
                : "[U+%04X]".formatted(letter).codePoints();
    }

    private Typeface face(int letter, Font font) {
        return text(font).has(letter) ? text(font) : signs(font);
    }

    private Typeface text(Font font) {
        String cut = font.isBold() ? (font.isItalic() ? "BoldItalic" : "Bold") : font.isItalic() ? "Italic" : "Regular";
        return faces.computeIfAbsent(TEXT + cut + ".ttf", Typeface::bundled);
    }

    private Typeface signs(Font font) {
        return faces.computeIfAbsent(SIGNS + (font.isBold() ? "-Bold" : "") + ".ttf", Typeface::bundled);
    }
}
