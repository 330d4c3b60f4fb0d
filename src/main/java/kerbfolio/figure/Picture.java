package kerbfolio.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A figure as a PNG, for where no vectors can be: the same bytes on every machine, with or without fonts. */
public final class Picture {
    private static final double DOTS_PER_POINT = 2;

    private final Letters letters = new Outlines();

    /** Draws the figure at its own size, 144 dots to the inch. */
    public byte[] of(Figure figure) {
        int width = (int) Math.round(figure.width() * DOTS_PER_POINT);
        int height = (int) Math.round(figure.height() * DOTS_PER_POINT);
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        canvas.setColor(Color.WHITE);
        canvas.fillRect(0, 0, width, height);
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        canvas.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        canvas.setRenderingHint(Letters.KEY, letters);
        figure.draw(canvas, width, height);
        canvas.dispose();
        return png(image);
    }

    private static byte[] png(BufferedImage image) {
        ImageIO.setUseCache(false);
        try (var out = new ByteArrayOutputStream()) {
            ImageIO.write(image, "png", out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
