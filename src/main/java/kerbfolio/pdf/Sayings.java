package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** What is said of a part of the page for those who cannot see it: words for signs and formulas, which head is whose. */
final class Sayings {
    /** What a sign says by its shape alone. */
    private static final Map<String, String> SIGNS = Map.ofEntries(
            Map.entry("☐", "box not ticked"),
            Map.entry("☑", "box ticked"),
            Map.entry("☒", "box crossed"),
            Map.entry("✓", "ticked"),
            Map.entry("✔", "ticked"),
            Map.entry("✗", "crossed"),
            Map.entry("✘", "crossed"),
            Map.entry("⚠", "warning"),
            Map.entry("⚡", "electric shock"));

    private Sayings() {}

    /** The words that stand for an inline element: its title, or the meaning of its sign; empty if it needs none. */
    static String of(Element element) {
        String title = element.getAttribute("title");
        return title.isEmpty() ? SIGNS.getOrDefault(element.getTextContent(), "") : title;
    }

    /** The text of an element, on one line. */
    static String words(Element element) {
        return element.getTextContent().strip().replaceAll("\\s+", " ");
    }

    /** Says of a tag what its element says. */
    static void describe(Tag tag, Element element) {
        String language = element.getAttribute("lang");
        if (!language.isEmpty()) {
            tag.say(PdfName.LANG, language);
        }
        String said = of(element);
        switch (tag.role()) {
            case FORMULA -> tag.say(PdfName.ALT, said.isEmpty() ? words(element) : said);
            case SPAN -> tag.say(element.getNodeName().equals("abbr") ? PdfName.E : PdfName.ALT, said);
            case L -> {
                if (element.getNodeName().equals("ol")) {
                    tag.attribute("List", "ListNumbering", new PdfName("Decimal"));
                }
            }
            case TH, TD -> cell(tag, element);
            default -> {}
        }
    }

    private static void cell(Tag tag, Element element) {
        if (tag.role() == Role.TH) {
            tag.attribute("Table", "Scope", new PdfName(isRowHead(element) ? "Row" : "Column"));
        }
        span(tag, "ColSpan", element.getAttribute("colspan"));
        span(tag, "RowSpan", element.getAttribute("rowspan"));
    }

    private static boolean isRowHead(Element cell) {
        Node rows = cell.getParentNode().getParentNode();
        String scope = cell.getAttribute("scope");
        return scope.isEmpty() ? "tbody".equals(rows.getNodeName()) : scope.equals("row");
    }

    private static void span(Tag tag, String key, String cells) {
        if (cells.matches("[1-9][0-9]{0,3}")) {
            tag.attribute("Table", key, new PdfNumber(cells));
        }
    }
}
