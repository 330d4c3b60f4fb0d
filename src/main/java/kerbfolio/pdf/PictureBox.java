package kerbfolio.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfRectangle;
import java.awt.Point;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextReplacedElement;

/** The room a drawing or photograph takes on the page. */
abstract class PictureBox implements ITextReplacedElement {
    private final int width;
    private final int height;
    private Point location = new Point(0, 0);

    /**
     * A box of the given size [dots of the layout]; a size that the style sheet does not give is not positive.
     *
     * @param name what the template calls the picture
     */
    PictureBox(String name, int width, int height) {
        if (width <= 0 || height <= 0) {
            throw TemplateComplaint.onPage("the picture `" + name + "` needs a width");
        }
        this.width = width;
        this.height = height;
    }

    /** What the picture shows, for a reader who cannot see it. */
    abstract String alternative();

    /** Says in words what the picture shows, and where on the page it lies. */
    final void describe(Tag tag, Rectangle area) {
        tag.say(PdfName.ALT, alternative());
        tag.attribute("Layout", "BBox", new PdfRectangle(area));
    }

    @Override
    public final int getIntrinsicWidth() {
        return width;
    }

    @Override
    public final int getIntrinsicHeight() {
        return height;
    }

    @Override
    public final Point getLocation() {
        return location;
    }

    @Override
    public final void setLocation(int x, int y) {
        location = new Point(x, y);
    }

    @Override
    public final void detach(LayoutContext context) {
        // nothing is attached
    }

    @Override
    public final boolean isRequiresInteractivePaint() {
        return false;
    }

    @Override
    public final boolean hasBaseline() {
        return false;
    }

    @Override
    public final int getBaseline() {
        return 0;
    }
}
