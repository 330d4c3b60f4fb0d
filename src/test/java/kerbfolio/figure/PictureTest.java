package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import kerbfolio.Sketch;
import org.junit.jupiter.api.Test;

class PictureTest {
    /** A pen on a picture of one inch by half an inch. */
    private static Pen pen(Graphics2D canvas) {
        return Pen.on(canvas, 144, 72, new Sketch(nothing -> {}));
    }

    private static BufferedImage picture(Consumer<Pen> strokes) throws IOException {
        return ImageIO.read(
                new ByteArrayInputStream(new Picture().of(new Sketch(canvas -> strokes.accept(pen(canvas))))));
    }

    private static long dark(BufferedImage image, int fromX, int toX) {
        long dark = 0;
        for (int x = fromX; x < toX; x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                dark += (image.getRGB(x, y) & 0xFF) < 0x80 ? 1 : 0;
            }
        }
        return dark;
    }

    @Test
    void aPictureHasTwoDotsToThePoint() throws IOException {
        BufferedImage image = picture(pen -> {});
        assertEquals(144, image.getWidth());
        assertEquals(72, image.getHeight());
        assertEquals(0, dark(image, 0, 144));
    }

    @Test
    void wordsAreSetWhereTheyAreMeasured() throws IOException {
        double[] width = {0};
        BufferedImage image = picture(pen -> {
            pen.left("HHHH", 10, 20, Type.STRONG);
            width[0] = pen.width("HHHH", Type.STRONG);
        });
        int begin = 10 * 2;
        int end = (int) Math.ceil((10 + width[0]) * 2);
        assertTrue(dark(image, begin, end) > 50);
        assertEquals(0, dark(image, 0, begin));
        assertEquals(0, dark(image, end, 144));
    }

    @Test
    void aPictureIsTheSameEveryTime() {
        Figure figure = Drawn.figure(Drawn.sample("estate"), "corner-weights");
        assertArrayEquals(new Picture().of(figure), new Picture().of(figure));
    }

    @Test
    void wordsThatDoNotFitAreCut() throws IOException {
        picture(pen -> {
            String cut = pen.fitted("a name that is much too long", 50, Type.TEXT);
            assertTrue(cut.startsWith("a name") && cut.endsWith("\u2026"), cut);
            assertTrue(pen.width(cut, Type.TEXT) <= 50);
            assertEquals("short", pen.fitted("short", 50, Type.TEXT));
        });
    }

    @Test
    void whatCannotBePrintedOnALineIsReplaced() {
        assertEquals("a b\ufffd\ufffdc\ufffd", Pen.clean("a\n\t b\u0007\u202ec\ud800"));
        assertEquals("\u00e9 5\u00a0kg", Pen.clean("e\u0301 5\u00a0kg"));
    }

    /** Of the mark's four quarters two are as dark as ink and two are white, whatever else is in colour. */
    @Test
    void theCentreOfGravityIsInkOnWhite() throws IOException {
        BufferedImage image = picture(pen -> pen.centre(36, 18, true));
        int white = 0xFFFFFFFF;
        assertEquals(Pen.INK.getRGB(), image.getRGB(72 + 3, 36 - 3));
        assertEquals(Pen.INK.getRGB(), image.getRGB(72 - 3, 36 + 3));
        assertEquals(white, image.getRGB(72 - 3, 36 - 3));
        assertEquals(white, image.getRGB(72 + 3, 36 + 3));
    }
}
