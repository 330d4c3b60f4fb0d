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
    void aHeadingBelowASectionIsABookmarkIfItHasAPlaceAndNeverALineOfTheContents() {
        Document page = filled("<div class=\"contents\"/><h1>Workings</h1><h2>Weight</h2><h3 id=\"gross\">Is the car"
                + " light?</h3><h3>aside</h3><h2>Sources</h2>");
        assertEquals(List.of("1 Workings", "1.1 Weight", "1.2 Sources"), texts(page, "a"));
        Element question = elements(page, "bookmark").stream()
                .filter(mark -> mark.getAttribute("href").equals("#gross"))
                .findFirst()
                .orElseThrow();
        assertEquals("Is the car light?", question.getAttribute("name"));
        assertEquals("1.1 Weight", ((Element) question.getParentNode()).getAttribute("name"));
        assertEquals(4, elements(page, "bookmark").size());
    }

    @Test
    void anEmptyLinkShowsTheSectionItsPlaceStandsInAndAnyOtherIsLeftAlone() {
        Document page = filled("<a href=\"#car\"/><a href=\"#car\">see</a><a href=\"#row\"/><a href=\"#how\"/>"
                + "<a href=\"#lead\"/><a href=\"#none\"/><h1>P</h1><p id=\"lead\">l</p><h2 id=\"car\">Car</h2>"
                + "<table><tr id=\"row\"><td>r</td></tr></table><h2>Why</h2><h3 id=\"how\">How?</h3>");
        assertEquals(List.of("1.1", "see", "1.1", "1.2", "1", ""), texts(page, "a"));
    }

    @Test
    void aPageWithoutPartsIsLeftAsItIs() {
        Document page = filled("<h2>Alone</h2><p>text</p>");
        assertEquals(List.of("Alone"), texts(page, "h2"));
        assertTrue(elements(page, "bookmark").isEmpty());
    }
}
