package kerbfolio.pdf;

import java.util.ArrayList;
import java.util.List;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Marks the text of a page before it is laid out. Signs that the text face lacks are set in the symbol face, because
 * the layout engine takes one face for an element and drops what that face lacks without a word. And text that stands
 * beside elements is given an element of its own, because the engine paints the bare text of a line before the elements
 * in it, and whoever copies or searches the page would find the words in that order.
 */
final class SymbolRuns {
    /** Unknown to every style sheet, so that it changes no look. */
    private static final String BARE = "run";

    private final Lettering lettering;

    SymbolRuns(Lettering lettering) {
        this.lettering = lettering;
    }

    void mark(Document page) {
        for (Text text : texts(page.getDocumentElement(), new ArrayList<>())) {
            mark(text);
        }
    }

    private static List<Text> texts(Node node, List<Text> found) {
        if (node instanceof Text text) {
            found.add(text);
        } else if (!isHead(node)) {
            for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
                texts(child, found);
            }
        }
        return found;
    }

    private static boolean isHead(Node node) {
        return "head".equals(node.getNodeName()) || "style".equals(node.getNodeName());
    }

    private void mark(Text text) {
        List<Lettering.Run> runs = lettering.runs(text.getData());
        Node parent = text.getParentNode();
        if (parent.getChildNodes().getLength() == 1
                && runs.size() == 1
                && !runs.get(0).symbol()) {
            text.setData(runs.get(0).text());
        } else if (!text.getData().isBlank()) {
            for (Lettering.Run run : runs) {
                parent.insertBefore(element(text.getOwnerDocument(), run), text);
            }
            parent.removeChild(text);
        }
    }

    private static Element element(Document page, Lettering.Run run) {
        Element element = page.createElementNS(Markup.XHTML, run.symbol() ? "span" : BARE);
        if (run.symbol()) {
            element.setAttribute("class", Markup.SYMBOL_CLASS);
        }
        element.appendChild(page.createTextNode(run.text()));
        return element;
    }
}
