package kerbfolio.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import kerbfolio.figure.Figure;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.render.RenderingContext;

/** A drawing on the page, as vectors. */
final class FigureBox extends PictureBox {
    private final Figure figure;
    private final Fonts fonts;
    private final Lettering lettering;

    /** A height the style sheet leaves to the figure follows from its proportions. */
    FigureBox(Figure figure, int width, int height, Fonts fonts, Lettering lettering) {
        super(figure.id(), width, height < 0 ? (int) Math.round(width * figure.height() / figure.width()) : height);
        this.figure = figure;
        this.fonts = fonts;
        this.lettering = lettering;
    }

    @Override
    String alternative() {
        return figure.alternative();
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
}
