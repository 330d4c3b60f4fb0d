package kerbfolio.pdf;

import com.lowagie.text.DocumentException;
import com.lowagie.text.pdf.PdfWriter;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xhtmlrenderer.pdf.ITextRenderer;
import org.xhtmlrenderer.simple.extend.XhtmlNamespaceHandler;

/**
 * Sets a filled page as PDF: reads it, chooses a face for every character, lays it out, paints it with its figures, and
 * closes it as an archival file. Same page, same facts, same bytes. One thread at a time.
 */
public final class Renderer {
    private static final String NOWHERE = "about:blank";

    static {
        System.setProperty("java.awt.headless", "true");
    }

    private final Fonts fonts;
    private final String program;

    /**
     * A renderer for any number of documents.
     *
     * @param fonts the bundled faces
     * @param program this program with its version, as it stands in the document's properties
     */
    public Renderer(Fonts fonts, String program) {
        this.fonts = fonts;
        this.program = program;
    }

    /**
     * Sets one document.
     *
     * @param xhtml the filled page, style sheet inside
     * @param facts what the document says about itself
     * @param pictures what the page may ask for
     * @throws TemplateComplaint if the page is faulty or asks for anything outside itself
     */
    public Pdf render(String xhtml, DocumentFacts facts, Pictures pictures) {
        StyleFaults.listen();
        Document page = Markup.read(xhtml);
        Contents.fill(page);
        Lettering lettering = new Lettering(fonts);
        new SymbolRuns(lettering).mark(page);

        Tags tags = new Tags(page);
        PageInk ink = new PageInk(ITextRenderer.DEFAULT_DOTS_PER_POINT, tags);
        ClosedDoor door = new ClosedDoor(ink, ITextRenderer.DEFAULT_DOTS_PER_PIXEL);
        ITextRenderer engine = new ITextRenderer(
                ITextRenderer.DEFAULT_DOTS_PER_POINT,
                ITextRenderer.DEFAULT_DOTS_PER_PIXEL,
                ink,
                door,
                new PageFonts(fonts),
                new PictureElements(pictures, fonts, lettering),
                new PageText(fonts));
        engine.getSharedContext().setLineBreakingStrategy(new LineEnds());
        layOut(engine, page, door);
        byte[] content = paint(engine, facts);
        door.complain();

        List<String> complaints = new ArrayList<>(lettering.complaints());
        complaints.addAll(tags.complaints());
        complaints.addAll(ink.complaints());
        return new Pdf(content, complaints);
    }

    private static void layOut(ITextRenderer engine, Document page, ClosedDoor door) {
        try {
            engine.setDocument(page, NOWHERE, new XhtmlNamespaceHandler());
            engine.layout();
        } catch (TemplateComplaint e) {
            StyleFaults.complain(); // a figure without a width may only lack it because its rule was not understood
            throw e;
        } catch (RuntimeException e) {
            door.complain();
            StyleFaults.complain();
            throw TemplateComplaint.onPage("the page cannot be laid out: " + e.getMessage(), e);
        }
        door.complain();
        StyleFaults.complain();
    }

    private byte[] paint(ITextRenderer engine, DocumentFacts facts) {
        // Links are drawn by the page's own ink; the engine's would have no words and no tag.
        engine.getSharedContext().setNamespaceHandler(new XhtmlNamespaceHandler() {
            @Override
            public @Nullable String getLinkUri(Element element) {
                return null;
            }
        });
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        engine.setPDFVersion(PdfWriter.VERSION_1_7);
        engine.setListener(new Archive(facts, program));
        try {
            engine.createPDF(file);
        } catch (DocumentException e) {
            throw new IllegalStateException("the PDF cannot be written", e);
        }
        return file.toByteArray();
    }
}
