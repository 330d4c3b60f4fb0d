package kerbfolio.pdf;

import static java.util.Objects.requireNonNull;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfAnnotation;
import com.lowagie.text.pdf.PdfBorderArray;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.xhtmlrenderer.css.style.CalculatedStyle.Edge;
import org.xhtmlrenderer.pdf.ITextOutputDevice;
import org.xhtmlrenderer.render.Box;
import org.xhtmlrenderer.render.InlineLayoutBox;
import org.xhtmlrenderer.render.LineBox;
import org.xhtmlrenderer.render.PageBox;
import org.xhtmlrenderer.render.RenderingContext;

/**
 * The links of the page being painted: one area to press for each line a link runs over, tied to the link's tag and
 * described by its words (ISO 14289-1, 7.18).
 */
final class Links {
    private record Line(Tag link, LineBox line) {}

    private final ITextOutputDevice ink;
    private final Tags tags;
    private final Map<Line, Rectangle> areas = new LinkedHashMap<>();

    Links(ITextOutputDevice ink, Tags tags) {
        this.ink = ink;
        this.tags = tags;
    }

    /** Text of a link was painted on a line. */
    void cover(Tag link, LineBox line, Rectangle area) {
        areas.merge(new Line(link, line), area, Links::both);
    }

    private static Rectangle both(Rectangle one, Rectangle other) {
        return new Rectangle(
                Math.min(one.getLeft(), other.getLeft()),
                Math.min(one.getBottom(), other.getBottom()),
                Math.max(one.getRight(), other.getRight()),
                Math.max(one.getTop(), other.getTop()));
    }

    /** Ends the page. */
    void finishPage(RenderingContext context) {
        areas.forEach((line, area) -> annotate(line.link(), area, context));
        areas.clear();
    }

    private void annotate(Tag link, Rectangle area, RenderingContext context) {
        Element source = tags.source(link);
        Box target =
                ink.getSharedContext().getBoxById(source.getAttribute("href").substring(1));
        PdfDestination destination = target == null ? null : destination(target, context);
        if (destination != null) {
            PdfWriter writer = ink.getCurrentPage().getPdfWriter();
            var annotation = new PdfAnnotation(writer, area);
            annotation.put(PdfName.SUBTYPE, PdfName.LINK);
            annotation.put(PdfName.F, new PdfNumber(PdfAnnotation.FLAGS_PRINT));
            String words = Sayings.words(source);
            String said = words.isEmpty() ? source.getAttribute("href") : words;
            annotation.put(PdfName.CONTENTS, new PdfString(said, PdfObject.TEXT_UNICODE));
            annotation.put(PdfName.DEST, destination);
            annotation.setBorder(new PdfBorderArray(0, 0, 0));
            annotation.put(PdfName.STRUCTPARENT, link.annotated(writer, annotation.getIndirectReference()));
            writer.addAnnotation(annotation);
        }
    }

    private @Nullable PdfDestination destination(Box target, RenderingContext context) {
        int line = target.getAbsY() + (target instanceof InlineLayoutBox inline ? inline.getBaseline() : 0);
        PageBox page = requireNonNull(context.getRootLayer()).getPage(context, line);
        if (page == null) {
            return null;
        }
        float down = page.getMarginBorderPadding(context, Edge.TOP)
                + target.getAbsY()
                + target.getMargin(context).top()
                - page.getTop();
        var destination =
                new PdfDestination(PdfDestination.XYZ, 0, ink.getDeviceLength(page.getHeight(context) - down), 0);
        destination.addPage(ink.getCurrentPage().getPdfWriter().getPageReference(page.getPageNo() + 1));
        return destination;
    }
}
