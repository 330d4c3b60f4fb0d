package kerbfolio.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfRectangle;
import com.lowagie.text.pdf.PdfTemplate;
import java.awt.Point;
import kerbfolio.figure.Figure;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.pdf.ITextReplacedElement;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** The room a figure takes on the page, and the drawing of it there. */
final class FigureBox implements ITextReplacedElement {
    private final Figure figure;
    private final int width;
    private final int height;
    private final Fonts fonts;
    private final Lettering lettering;
    private Point location = new Point(0, 0);

    /** A box of the given size [dots of the layout]; a size that the style sheet does not give is not positive. */
    FigureBox(Figure figure, int width, int height, Fonts fonts, Lettering lettering) {
        if (width <= 0 || height <= 0) {
            throw TemplateComplaint.onPage("the figure `" + figure.id() + "` needs a width");
        }
        this.figure = figure;
        this.width = width;
        this.height = height;
        this.fonts = fonts;
        this.lettering = lettering;
    }

    /** Says in words what the drawing shows, and where on the page it lies. */
    void describe(Tag tag, Rectangle area) {
        tag.say(PdfName.ALT, figure.caption());
        tag.attribute("Layout", "BBox", new PdfRectangle(area));
    }

    @Override
    public void paint(RenderingContext context, ITextOutputDevice device, BlockBox box) {
        Rectangle area = device.createLocalTargetArea(context, box);
        PdfContentByte page = device.getCurrentPage();
        PdfTemplate drawing = page.createTemplate(area.getWidth(), area.getHeight());
        FigureCanvas canvas = new FigureCanvas(drawing, area.getWidth(), area.getHeight(), fonts, lettering);
        try {
            figure.draw(canvas, area.getWidth(), area.getHeight());
        } finally {
            canvas.dispose();
        }
        page.saveState();
        page.addTemplate(drawing, area.getLeft(), area.getBottom());
        page.restoreState();
    }

    @Override
    public int getIntrinsicWidth() {
        return width;
    }

    @Override
    public int getIntrinsicHeight() {
        return height;
    }

    @Override
    public Point getLocation() {
        return location;
    }

    @Override
    public void setLocation(int x, int y) {
        location = new Point(x, y);
    }

    @Override
    public void detach(LayoutContext context) {
        // nothing is attached
    }

    @Override
    public boolean isRequiresInteractivePaint() {
        return false;
    }

    @Override
    public boolean hasBaseline() {
        return false;
    }

    @Override
    public int getBaseline() {
        return 0;
    }
}
