package kerbfolio.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import org.jspecify.annotations.Nullable;

/**
 * A photograph as it is printed: upright, no larger than paper can show, without whatever else the camera wrote into the
 * file.
 *
 * @param jpeg the picture as JPEG; must not be changed
 * @param width its width [pixels]
 * @param height its height [pixels]
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody, and large: not copied
public record Print(byte[] jpeg, int width, int height) {
    /** Its height over its width. */
    public double shape() {
        return (double) height / width;
    }

    /** The longer side: 300 dots an inch at the largest size a page shows it. */
    static final int LONGER_SIDE = 1400;

    /** More would not fit into the memory of a small machine. */
    static final long MOST_PIXELS = 50_000_000;

    private static final Set<String> FORMATS = Set.of("jpeg", "png");
    private static final double QUALITY = 0.85;

    /** Markers of ITU-T T.81, table B.1: JFIF, quantization and Huffman tables, restart interval, baseline frame. */
    private static final Set<Integer> NEEDED = Set.of(0xFFE0, 0xFFDB, 0xFFC4, 0xFFDD, 0xFFC0);

    private static final int START_OF_IMAGE = 0xFFD8;
    private static final int START_OF_SCAN = 0xFFDA;

    static {
        ImageIO.setUseCache(false); // no picture of a job is left in the system's folder of temporary files
    }

    /**
     * Makes the print of a file. A print made from a print is the same.
     *
     * @throws Unprintable if it is no picture, or not one that can be printed
     * @throws IOException if the file cannot be read
     */
    static Print of(Path file) throws Unprintable, IOException {
        double scale = scale(file);
        try {
            BufferedImage picture = Thumbnails.of(file.toFile()) // turns it upright, as its EXIF orientation asks
                    .scale(scale)
                    .addFilter(Print::onWhite)
                    .asBufferedImage();
            byte[] content = Files.readAllBytes(file);
            byte[] print = scale == 1 && isBare(content) ? content : encoded(picture);
            return new Print(print, picture.getWidth(), picture.getHeight());
        } catch (IOException | RuntimeException e) { // the readers' ways of meeting a damaged picture
            throw new Unprintable("cannot be read to its end as a picture; save it anew as JPEG or PNG", e);
        }
    }

    private static byte[] encoded(BufferedImage picture) throws IOException {
        var print = new ByteArrayOutputStream();
        Thumbnails.of(picture)
                .scale(1)
                .outputFormat("jpg")
                .outputQuality(QUALITY)
                .toOutputStream(print);
        return print.toByteArray();
    }

    /** Whether a file is a baseline JPEG and nothing else: every marker before the picture's own data is one it needs. */
    private static boolean isBare(byte[] file) {
        if (file.length < 4 || word(file, 0) != START_OF_IMAGE) {
            return false;
        }
        int at = 2;
        while (at + 4 <= file.length && NEEDED.contains(word(file, at))) {
            at += 2 + word(file, at + 2);
        }
        return at + 2 <= file.length && word(file, at) == START_OF_SCAN;
    }

    private static int word(byte[] file, int at) {
        return ((file[at] & 0xFF) << Byte.SIZE) | (file[at + 1] & 0xFF);
    }

    private static double scale(Path file) throws Unprintable, IOException {
        try (ImageInputStream stream = ImageIO.createImageInputStream(file.toFile())) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new Unprintable("is no picture; save it as JPEG or PNG", null);
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream);
                String format = reader.getFormatName().toLowerCase(Locale.ROOT);
                if (!FORMATS.contains(format)) {
                    throw new Unprintable("is a picture of the kind " + format + "; save it as JPEG or PNG", null);
                }
                return scale(reader.getWidth(0), reader.getHeight(0));
            } catch (IOException | RuntimeException e) {
                throw new Unprintable("is damaged where its size stands; save it anew as JPEG or PNG", e);
            } finally {
                reader.dispose();
            }
        }
    }

    private static double scale(int width, int height) throws Unprintable {
        if ((long) width * height > MOST_PIXELS) {
            throw new Unprintable(
                    "has " + width + " by " + height + " pixels; save a copy of at most " + MOST_PIXELS / 1_000_000
                            + " million",
                    null);
        }
        return Math.min(1, (double) LONGER_SIDE / Math.max(width, height));
    }

    /** A transparent ground becomes white, as the paper is. */
    private static BufferedImage onWhite(BufferedImage picture) {
        var opaque = new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = opaque.createGraphics();
        canvas.drawImage(picture, 0, 0, Color.WHITE, null);
        canvas.dispose();
        return opaque;
    }

    /** What is wrong with a file as a photograph, fit to stand after its name. */
    static final class Unprintable extends Exception {
        private static final long serialVersionUID = 1L;

        Unprintable(String reason, @Nullable Throwable cause) {
            super(reason, cause);
        }
    }
}
