package kerbfolio.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import org.jspecify.annotations.Nullable;

/**
 * The marks in the content of the page being painted (ISO 32000-1, 14.6): all of it belongs to a tag or is an artifact,
 * and one mark reaches as far as what it belongs to does not change.
 */
final class Marks {
    private static final PdfName ARTIFACT = new PdfName("Artifact");
    private static final PdfDictionary PLAIN = artifact("Layout");
    private static final PdfDictionary HEADER = pagination("Header");
    private static final PdfDictionary FOOTER = pagination("Footer");

    private @Nullable PdfContentByte page;
    private float middle;
    /** What the open mark is of: a place in the text, a tag or an artifact. */
    private @Nullable Object open;

    private static PdfDictionary artifact(String type) {
        var properties = new PdfDictionary();
        properties.put(PdfName.TYPE, new PdfName(type));
        return properties;
    }

    private static PdfDictionary pagination(String subtype) {
        var properties = artifact("Pagination");
        properties.put(PdfName.SUBTYPE, new PdfName(subtype));
        return properties;
    }

    void begin(PdfContentByte content, float height) {
        page = content;
        middle = height / 2;
        open = null;
    }

    /** What follows is a rule, a ground, or a repetition. */
    void artifact() {
        artifact(PLAIN);
    }

    /** What follows is a running head or foot. */
    void margin(Rectangle area) {
        artifact(area.getBottom() > middle ? HEADER : FOOTER);
    }

    private void artifact(PdfDictionary properties) {
        if (turn(properties)) {
            content().beginMarkedContentSequence(ARTIFACT, properties, true);
        }
    }

    /** What follows is of a tag, and stands at a place in the text. */
    void tag(Tag tag, int place) {
        if (turn(tag.isLeaf() ? tag : place)) {
            tag.begin(content(), place);
        }
    }

    private boolean turn(Object next) {
        if (next.equals(open)) {
            return false;
        }
        close();
        open = next;
        return true;
    }

    void close() {
        if (open != null) {
            content().endMarkedContentSequence();
            open = null;
        }
    }

    private PdfContentByte content() {
        if (page == null) {
            throw new IllegalStateException("no page");
        }
        return page;
    }
}
