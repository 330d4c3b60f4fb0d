package kerbfolio.pdf;

import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.extend.ReplacedElement;
import org.xhtmlrenderer.extend.ReplacedElementFactory;
import org.xhtmlrenderer.extend.UserAgentCallback;
import org.xhtmlrenderer.layout.LayoutContext;
import org.xhtmlrenderer.render.BlockBox;
import org.xhtmlrenderer.simple.extend.FormSubmissionListener;

/**
 * Puts a drawing where the page says {@code <object type="figure" data="its id"/>}, and a photograph where it says {@code
 * <object type="photo" data="its file" title="what it shows"/>}. Their size is the style sheet's affair.
 */
final class PictureElements implements ReplacedElementFactory {
    private final Pictures pictures;
    private final Fonts fonts;
    private final Lettering lettering;

    PictureElements(Pictures pictures, Fonts fonts, Lettering lettering) {
        this.pictures = pictures;
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
        String name = element.getAttribute("data");
        return switch (element.getAttribute("type")) {
            case "figure" -> new FigureBox(named(name, pictures.figures()), width, height, fonts, lettering);
            case "photo" -> {
                String words = element.getAttribute("title");
                yield new PhotoBox(named(name, pictures.photographs()), name, words, width, height);
            }
            default ->
                throw TemplateComplaint.onPage(
                        "<object> is only for figures and photographs of the job; nothing is fetched from " + name);
        };
    }

    private static <T> T named(String name, Map<String, T> pictures) {
        T picture = pictures.get(name);
        if (picture == null) {
            throw TemplateComplaint.onPage(
                    "there is no picture `" + name + "`; there are " + new TreeSet<>(pictures.keySet()));
        }
        return picture;
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
