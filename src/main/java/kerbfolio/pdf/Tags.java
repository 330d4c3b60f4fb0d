package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * What every part of a page is, told from its elements: for a reader who hears the page, or reads it on a narrow screen
 * (ISO 14289-1). An element this program does not know belongs to what it stands in.
 */
final class Tags {
    /** The tag a node belongs to, and where in the text it begins and ends. */
    record Spot(Tag tag, int begin, int end) {}

    private static final Map<String, Role> ROLES = Map.ofEntries(
            Map.entry("section", Role.SECT),
            Map.entry("article", Role.SECT),
            Map.entry("blockquote", Role.BLOCK_QUOTE),
            Map.entry("p", Role.P),
            Map.entry("pre", Role.P),
            Map.entry("dt", Role.P),
            Map.entry("dd", Role.P),
            Map.entry("figcaption", Role.P),
            Map.entry("object", Role.FIGURE),
            Map.entry("ul", Role.L),
            Map.entry("ol", Role.L),
            Map.entry("li", Role.LI),
            Map.entry("table", Role.TABLE),
            Map.entry("caption", Role.CAPTION),
            Map.entry("thead", Role.T_HEAD),
            Map.entry("tbody", Role.T_BODY),
            Map.entry("tfoot", Role.T_FOOT),
            Map.entry("tr", Role.TR),
            Map.entry("th", Role.TH),
            Map.entry("td", Role.TD));

    /** Elements that only hold others, or a paragraph. */
    private static final Set<String> DIVISIONS =
            Set.of("div", "dl", "figure", "header", "footer", "main", "nav", "aside", "address");

    private static final Pattern HEADING = Pattern.compile("h[1-6]");

    private final IdentityHashMap<Node, Spot> spots = new IdentityHashMap<>();
    private final IdentityHashMap<Tag, Element> links = new IdentityHashMap<>();
    private final List<String> complaints = new ArrayList<>();
    private final Set<String> anchors;
    private final Tag document = Tag.document();
    private int place;
    private int level;

    Tags(Document page) {
        anchors = anchors(page);
        place(page.getDocumentElement(), document);
    }

    private static Set<String> anchors(Document page) {
        var anchors = new HashSet<String>();
        for (Element element : Markup.elements(page)) {
            anchors.add("#" + element.getAttribute("id"));
            anchors.add("#" + element.getAttribute("name"));
        }
        anchors.remove("#");
        return anchors;
    }

    /** Where a node belongs; nothing for one that is not of the text. */
    @Nullable
    Spot of(@Nullable Node node) {
        return spots.get(node);
    }

    /**
     * Where the words belong that a style sheet adds to an element. The engine does not say whether before or after it:
     * after it, if the last words were in it.
     */
    @Nullable
    Spot added(@Nullable Element element, int last) {
        Spot spot = spots.get(element);
        if (spot == null) {
            return null;
        }
        int at = last > spot.begin() && last < spot.end() ? spot.end() : spot.begin();
        return new Spot(spot.tag().home(Role.SPAN, at), at, at);
    }

    /** The element a link was made from. */
    Element source(Tag link) {
        Element source = links.get(link);
        if (source == null) {
            throw new IllegalArgumentException("no link");
        }
        return source;
    }

    /** Faults of the page that a reader would stumble over. */
    List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** Writes the structure, when the last page has been painted. */
    void finish(PdfWriter writer) {
        document.finish(writer);
    }

    private void place(Node node, Tag around) {
        int begin = ++place;
        Tag tag = around;
        if (node instanceof Element element) {
            if ("head".equals(element.getNodeName())) {
                return;
            }
            tag = tag(element, around);
        } else if (node instanceof Text text) {
            // Blanks between the rows of a table, say, are nothing; between two words they are a blank.
            boolean nothing = text.getData().isBlank() && around.role().between(Role.SPAN) != null;
            tag = nothing ? around : around.home(Role.SPAN, begin);
        }
        for (Node kid = node.getFirstChild(); kid != null; kid = kid.getNextSibling()) {
            place(kid, tag);
        }
        spots.put(node, new Spot(tag, begin, ++place));
    }

    private Tag tag(Element element, Tag around) {
        Role role = around.role() == Role.FORMULA ? null : role(element, around);
        if (role == null) {
            return around;
        }
        Tag tag = around.child(role, place);
        if (tag.role() == Role.LINK) {
            links.put(tag, element);
        }
        Sayings.describe(tag, element);
        return tag;
    }

    private @Nullable Role role(Element element, Tag around) {
        String name = element.getNodeName();
        if (HEADING.matcher(name).matches()) {
            return Sayings.words(element).isEmpty() ? null : heading(element, name.charAt(1) - '0');
        }
        if (DIVISIONS.contains(name)) {
            return isOf(element, "part") ? Role.PART : holdsBlocks(element) ? Role.DIV : Role.P;
        }
        boolean contents = around.role() == Role.TOC || around.role() == Role.TOCI || isOf(element, "contents");
        if (contents && (name.equals("ul") || name.equals("ol"))) {
            return Role.TOC;
        }
        if (contents && name.equals("li")) {
            return Role.TOCI;
        }
        return ROLES.containsKey(name) ? ROLES.get(name) : inline(element, name);
    }

    private @Nullable Role inline(Element element, String name) {
        if (isOf(element, "math") && !Sayings.words(element).isEmpty()) {
            return Role.FORMULA;
        }
        String target = element.getAttribute("href");
        if (name.equals("a") && !target.isEmpty()) {
            if (anchors.contains(target)) {
                return Role.LINK;
            }
            complaints.add("a link leads to " + target + ", which is not in the document");
        }
        boolean isRoot = name.equals("html") || name.equals("body");
        return isRoot || Sayings.of(element).isEmpty() ? null : Role.SPAN;
    }

    /** A level that is left out would make a reader look for a heading that is not there (ISO 14289-1, 7.4.2). */
    private Role heading(Element element, int wanted) {
        if (wanted > level + 1) {
            complaints.add("the heading \"" + Sayings.words(element) + "\" is an h" + wanted + " with no h"
                    + (wanted - 1) + " above it");
        }
        level = Math.min(wanted, level + 1);
        return Role.heading(level);
    }

    private static boolean holdsBlocks(Element element) {
        for (Node kid = element.getFirstChild(); kid != null; kid = kid.getNextSibling()) {
            String name = kid.getNodeName();
            if (ROLES.containsKey(name)
                    || DIVISIONS.contains(name)
                    || HEADING.matcher(name).matches()) {
                return true;
            }
        }
        return false;
    }

    private static boolean isOf(Element element, String kind) {
        return (" " + element.getAttribute("class") + " ").contains(" " + kind + " ");
    }
}
