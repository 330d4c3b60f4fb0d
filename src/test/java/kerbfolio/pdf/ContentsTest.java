package kerbfolio.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ContentsTest {
    private static Document filled(String body) {
        Document page = Markup.read("<html xmlns=\"http://www.w3.org/1999/xhtml\"><head><title>t</title></head><body>"
                + body + "</body></html>");
        Contents.fill(page);
        return page;
    }

    private static List<String> texts(Document page, String name) {
        return elements(page, name).stream().map(Element::getTextContent).toList();
    }

    private static List<Element> elements(Document page, String name) {
        var found = new ArrayList<Element>();
        var all = page.getElementsByTagName(name);
        for (int i = 0; i < all.getLength(); i++) {
            found.add((Element) all.item(i));
        }
        return found;
    }

    @Test
    void partsAndSectionsAreNumberedInTheirOrder() {
        Document page =
                filled("<h1>Handover</h1><h2>Gates</h2><h3>open</h3><h2>Glance</h2><h1>Workings</h1><h2>How?</h2>");
        assertEquals(List.of("1 Handover", "2 Workings"), texts(page, "h1"));
        assertEquals(List.of("1.1 Gates", "1.2 Glance", "2.1 How?"), texts(page, "h2"));
        assertEquals(List.of("open"), texts(page, "h3"));
    }

    @Test
    void contentsAndBookmarksFollowTheHeadings() {
        Document page = filled("<div class=\"contents\"/><h1 id=\"a\">Handover</h1><h2>The\n  car <i>now</i></h2>");
        assertEquals(List.of("1 Handover", "1.1 The car now"), texts(page, "a"));
        List<Element> links = elements(page, "a");
        assertEquals("#a", links.get(0).getAttribute("href"));
        String place = links.get(1).getAttribute("href").substring(1);
        assertEquals(place, elements(page, "h2").get(0).getAttribute("id"));
        assertEquals(
                List.of("1 Handover", "1.1 The car now"),
                elements(page, "bookmark").stream()
                        .map(mark -> mark.getAttribute("name"))
                        .toList());
    }

    @Test
    void anEmptyLinkToASectionShowsItsNumberAndAnyOtherIsLeftAlone() {
        Document page =
                filled("<a href=\"#car\"/><a href=\"#car\">see</a><a href=\"#row\"/><h1>P</h1><h2 id=\"car\">Car</h2>"
                        + "<p id=\"row\">r</p>");
        assertEquals(List.of("1.1", "see", ""), texts(page, "a"));
    }

    @Test
    void aPageWithoutPartsIsLeftAsItIs() {
        Document page = filled("<h2>Alone</h2><p>text</p>");
        assertEquals(List.of("Alone"), texts(page, "h2"));
        assertTrue(elements(page, "bookmark").isEmpty());
    }
}
