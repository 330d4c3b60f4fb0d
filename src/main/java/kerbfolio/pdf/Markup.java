package kerbfolio.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.w3c.dom.ProcessingInstruction;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Reads the filled page. A page is closed in itself: no document type, no entity, nothing fetched, nothing that acts,
 * no way out of the document.
 */
final class Markup {
    static final String XHTML = "http://www.w3.org/1999/xhtml";
    static final String SYMBOL_CLASS = "symbol";

    private static final Set<String> REFUSED = Set.of(
            "applet",
            "audio",
            "base",
            "button",
            "embed",
            "form",
            "frame",
            "iframe",
            "img",
            "input",
            "link",
            "script",
            "select",
            "textarea",
            "video");
    private static final Set<String> ADDRESSES = Set.of("src", "href", "data", "action");
    private static final int EXCERPT = 80;
    private static final Pattern HEADING = Pattern.compile("<h[123][^>]*>([^<]*)<");

    private Markup() {}

    /**
     * Reads a page and gives it the two faces to start from.
     *
     * @throws TemplateComplaint if it is not well-formed, or asks for something from outside
     */
    static Document read(String xhtml) {
        Document page = parse(xhtml);
        List<String> complaints = new ArrayList<>(instructions(page));
        elements(page).forEach(element -> refuse(element, complaints));
        if (!complaints.isEmpty()) {
            throw TemplateComplaint.onPage(complaints);
        }
        addFaces(page);
        return page;
    }

    /** Every element of a page, as it is now and in its order; the parser's own live list counts from the start each time. */
    static List<Element> elements(Document page) {
        List<Element> found = new ArrayList<>();
        gather(page.getDocumentElement(), found);
        return found;
    }

    private static void gather(Element element, List<Element> found) {
        found.add(element);
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                gather(inner, found);
            }
        }
    }

    private static Document parse(String xhtml) {
        try {
            DocumentBuilder builder = builder();
            builder.setErrorHandler(new Strict());
            return builder.parse(new InputSource(new StringReader(xhtml)));
        } catch (SAXParseException e) {
            throw TemplateComplaint.onPage(
                    "the filled page is not well-formed: " + e.getMessage() + place(xhtml, e.getLineNumber()), e);
        } catch (SAXException | IOException e) {
            throw TemplateComplaint.onPage("the filled page cannot be read: " + e.getMessage(), e);
        }
    }

    private static DocumentBuilder builder() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setXIncludeAware(false);
            factory.setExpandEntityReferences(false);
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the Java runtime has no secure XML reader", e);
        }
    }

    private static String place(String xhtml, int line) {
        return xhtml.lines()
                        .skip(Math.max(0, line - 1L))
                        .findFirst()
                        .map(text -> " Line " + line + ": " + text.strip())
                        .map(text -> text.substring(0, Math.min(text.length(), EXCERPT)))
                        .orElse("")
                + heading(xhtml, line);
    }

    /** The heading above a line, by which whoever wrote the template finds the place. */
    private static String heading(String xhtml, int line) {
        String above = xhtml.lines().limit(Math.max(0, line)).collect(Collectors.joining("\n"));
        Matcher headings = HEADING.matcher(above);
        String last = "";
        while (headings.find()) {
            last = "; it stands below the heading \"" + headings.group(1).strip() + "\"";
        }
        return last;
    }

    /** Instructions to the processor stand before the page, and one of them fetches style sheets. */
    private static List<String> instructions(Document page) {
        List<String> complaints = new ArrayList<>();
        for (Node node = page.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof ProcessingInstruction order) {
                complaints.add("<?" + order.getTarget() + " " + order.getData() + "?> is not allowed in a page");
            }
        }
        return complaints;
    }

    private static void refuse(Element element, List<String> complaints) {
        String name = element.getNodeName().toLowerCase(Locale.ROOT);
        if (REFUSED.contains(name)) {
            complaints.add("<" + name + "> is not allowed in a report template" + address(element));
        }
        String target = element.getAttribute("href");
        if (name.equals("a") && !target.isEmpty() && !target.startsWith("#")) {
            complaints.add("a link may only lead to a place in the document, not to " + target);
        }
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            String attribute = attributes.item(i).getNodeName().toLowerCase(Locale.ROOT);
            if (attribute.startsWith("on")) {
                complaints.add("`" + attribute + "` is not allowed in a report template: paper does not act");
            }
        }
    }

    private static String address(Element element) {
        return ADDRESSES.stream()
                .filter(element::hasAttribute)
                .map(element::getAttribute)
                .findFirst()
                .map(address -> "; nothing is fetched from " + address)
                .orElse("");
    }

    private static void addFaces(Document page) {
        Element style = page.createElementNS(XHTML, "style");
        style.setAttribute("type", "text/css");
        style.setTextContent("html { font-family: \"" + Fonts.TEXT + "\" } ." + SYMBOL_CLASS + " { font-family: \""
                + Fonts.SYMBOLS + "\" }");
        Element root = page.getDocumentElement();
        NodeList heads = root.getElementsByTagName("head");
        if (heads.getLength() == 0) {
            throw TemplateComplaint.onPage("the page has no <head>");
        }
        heads.item(0).insertBefore(style, heads.item(0).getFirstChild());
    }

    /** The parser's own handler prints to the terminal; this one only refuses. */
    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
