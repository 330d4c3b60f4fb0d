package kerbfolio.pdf;

import com.lowagie.text.Image;
import com.lowagie.text.Rectangle;
import java.io.IOException;
import java.io.UncheckedIOException;
import kerbfolio.photo.Print;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A photograph on the page, whole and undistorted in the room it has, at the left of it. */
final class PhotoBox extends PictureBox {
    private static final double HIGHEST = 0.75;

    private final Print print;
    private final String words;

    /** A height the style sheet leaves open follows the photograph, but an upright one is no higher than others. */
    PhotoBox(Print print, String name, String words, int width, int height) {
        super(name, width, height < 0 ? (int) Math.round(width * Math.min(HIGHEST, print.shape())) : height);
        this.print = print;
        this.words = words.isBlank() ? "photograph " + name : words;
    }

    @Override
    String alternative() {
        return words;
    }

    @Override
    public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
        Rectangle area = device.createLocalTargetArea(context, box);
        float scale = Math.min(area.getWidth() / print.width(), area.getHeight() / print.height());
        float height = print.height() * scale;
        try {
            device.getCurrentPage()
                    .addImage(
                            Image.getInstance(print.jpeg()),
                            print.width() * scale,
                            0,
                            0,
                            height,
                            area.getLeft(),
                            area.getTop() - height);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
