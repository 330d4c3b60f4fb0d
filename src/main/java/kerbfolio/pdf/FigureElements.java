package kerbfolio.pdf;

import java.util.Map;
import java.util.TreeSet;
import kerbfolio.figure.Figure;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.ReplacedElementFactory;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.simple.extend.FormSubmissionListener;

/** Puts a drawing where the page says {@code <object type="figure" data="its id" style="width: …"/>}. */
final class FigureElements implements ReplacedElementFactory {
    private final Map<String, Figure> figures;
    private final Fonts fonts;
    private final Lettering lettering;

    FigureElements(Map<String, Figure> figures, Fonts fonts, Lettering lettering) {
        this.figures = figures;
        this.fonts = fonts;
        this.lettering = lettering;
    }

    @Override
    public @Nullable ReplacedElement createReplacedElement(
            LayoutContext context, BlockBox box, UserAgentCallback door, int width, int height) {
        Element element = box.getElement();
        if (element == null || !"object".equals(element.getNodeName())) {
            return null;
        }
        if (!"figure".equals(element.getAttribute("type"))) {
            throw TemplateComplaint.onPage(
                    "<object> is only for figures; nothing is fetched from " + element.getAttribute("data"));
        }
        Figure figure = figure(element.getAttribute("data"));
        return new FigureBox(figure, width, height < 0 ? proportional(figure, width) : height, fonts, lettering);
    }

    /** A height the style sheet leaves to the figure. */
    private static int proportional(Figure figure, int width) {
        return (int) Math.round(width * figure.height() / figure.width());
    }

    private Figure figure(String id) {
        Figure figure = figures.get(id);
        if (figure == null) {
            throw TemplateComplaint.onPage(
                    "there is no figure `" + id + "`; there are " + new TreeSet<>(figures.keySet()));
        }
        return figure;
    }

    @Override
    public void reset() {
        // nothing is kept between documents
    }

    @Override
    public void remove(Element element) {
        // nothing is kept for an element
    }

    @Override
    public void setFormSubmissionListener(@Nullable FormSubmissionListener listener) {
        // paper has no forms
    }
}
