package kerbfolio.photo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.ExifUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

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

    /** What the reader of JPEG says of a file whose end is missing; other warnings are of no harm. */
    private static final Pattern BREAKS_OFF = Pattern.compile("(?i)premature|truncated|missing EOI");

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
        byte[] content = Files.readAllBytes(file);
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(content))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new Unprintable("is no picture; save it as JPEG or PNG");
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream);
                boolean ready = Jpeg.isBare(content) && longer(reader.getWidth(0), reader.getHeight(0)) <= LONGER_SIDE;
                BufferedImage picture = ready ? whole(reader, 1) : picture(reader);
                byte[] print = ready ? content : encoded(picture);
                return new Print(print, picture.getWidth(), picture.getHeight());
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException e) { // the readers' ways of meeting a damaged picture
            throw new Unprintable("cannot be read as a picture; save it anew as JPEG or PNG", e);
        }
    }

    private static BufferedImage picture(ImageReader reader) throws Unprintable, IOException {
        String format = reader.getFormatName().toLowerCase(Locale.ROOT);
        if (!FORMATS.contains(format)) {
            throw new Unprintable("is a picture of the kind " + format + "; save it as JPEG or PNG");
        }
        int longer = longer(reader.getWidth(0), reader.getHeight(0));
        // Of a large picture only every second, third … dot is read: the whole would not fit into a small memory.
        int step = Math.max(1, longer / (2 * LONGER_SIDE));
        BufferedImage raw = whole(reader, step);
        var print = Thumbnails.of(raw)
                .scale(Math.min(1, (double) LONGER_SIDE / Math.max(raw.getWidth(), raw.getHeight())))
                .addFilter(Print::onWhite);
        if (format.equals("jpeg")) {
            Orientation held = ExifUtils.getExifOrientation(reader, 0);
            print = held == null ? print : print.addFilter(ExifFilterUtils.getFilterForOrientation(held));
        }
        return print.asBufferedImage();
    }

    /** Every dot, or every second, third … of a picture that does not break off. */
    private static BufferedImage whole(ImageReader reader, int step) throws Unprintable, IOException {
        ImageReadParam part = reader.getDefaultReadParam();
        part.setSourceSubsampling(step, step, 0, 0);
        List<String> warnings = new ArrayList<>();
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        BufferedImage raw = reader.read(0, part);
        if (warnings.stream().anyMatch(warning -> BREAKS_OFF.matcher(warning).find())) {
            throw new Unprintable("breaks off before its end; copy it anew");
        }
        return raw;
    }

    private static int longer(int width, int height) throws Unprintable {
        if ((long) width * height > MOST_PIXELS) {
            throw new Unprintable("has " + width + " by " + height + " pixels; save a copy of at most "
                    + MOST_PIXELS / 1_000_000 + " million");
        }
        return Math.max(width, height);
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

        Unprintable(String reason) {
            super(reason);
        }

        Unprintable(String reason, Throwable cause) {
            super(reason, cause);
        }
    }
}
