package kerbfolio.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * What follows from the headings of a page, so that no template has to keep it in step: each part ({@code h1}) and
 * section ({@code h2}) gets its number and a place to be led to; {@code <div class="contents"/>} is filled with them, the
 * reader's bookmarks are made of them, and an empty link to a section shows its number.
 */
final class Contents {
    private final Document page;
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, String> numbers = new LinkedHashMap<>();

    /** A heading with the place it stands at. */
    private record Entry(String number, String title, String id) {}

    /** A part and its sections. */
    private record Part(Entry head, List<Entry> sections) {}

    private Contents(Document page) {
        this.page = page;
    }

    /** Numbers the headings of a page and fills in what leads to them. */
    static void fill(Document page) {
        Contents contents = new Contents(page);
        contents.number();
        contents.list();
        contents.bookmarks();
        contents.references();
    }

    private void number() {
        for (Element heading : Markup.elements(page)) {
            if (heading.getTextContent().isBlank()) {
                continue; // a heading without words leads nowhere
            }
            switch (heading.getNodeName().toLowerCase(Locale.ROOT)) {
                case "h1" -> parts.add(new Part(entry(heading, String.valueOf(parts.size() + 1)), new ArrayList<>()));
                case "h2" -> {
                    if (!parts.isEmpty()) {
                        List<Entry> sections = parts.get(parts.size() - 1).sections();
                        sections.add(entry(heading, parts.size() + "." + (sections.size() + 1)));
                    }
                }
                default -> {
                    // deeper headings are found from their section
                }
            }
        }
    }

    private Entry entry(Element heading, String number) {
        if (!heading.hasAttribute("id")) {
            heading.setAttribute("id", "section-" + number.replace('.', '-'));
        }
        Entry entry = new Entry(
                number, heading.getTextContent().replaceAll("\\s+", " ").strip(), heading.getAttribute("id"));
        heading.insertBefore(element("span", "number", number + " "), heading.getFirstChild());
        numbers.put(entry.id(), number);
        return entry;
    }

    private void list() {
        for (Element place : elements("div")) {
            if ("contents".equals(place.getAttribute("class"))) {
                for (Part part : parts) {
                    Element list = element("ul", "plain", "");
                    list.appendChild(line(part.head(), "part-line"));
                    part.sections().forEach(section -> list.appendChild(line(section, "section-line")));
                    place.appendChild(list);
                }
            }
        }
    }

    private Element line(Entry entry, String style) {
        Element line = element("li", style, "");
        Element link = element("a", "entry", entry.number() + " " + entry.title());
        link.setAttribute("href", "#" + entry.id());
        line.appendChild(link);
        return line;
    }

    private void bookmarks() {
        Element tree = element("bookmarks", "", "");
        for (Part part : parts) {
            Element branch = bookmark(part.head());
            part.sections().forEach(section -> branch.appendChild(bookmark(section)));
            tree.appendChild(branch);
        }
        elements("head").get(0).appendChild(tree);
    }

    private Element bookmark(Entry entry) {
        Element mark = element("bookmark", "", "");
        mark.setAttribute("name", entry.number() + " " + entry.title());
        mark.setAttribute("href", "#" + entry.id());
        return mark;
    }

    private void references() {
        for (Element link : elements("a")) {
            String number = numbers.get(link.getAttribute("href").replaceFirst("^#", ""));
            if (number != null && link.getTextContent().isBlank()) {
                link.setTextContent(number);
            }
        }
    }

    private List<Element> elements(String name) {
        return Markup.elements(page).stream()
                .filter(element -> element.getNodeName().equals(name))
                .toList();
    }

    private Element element(String name, String style, String text) {
        Element element = page.createElementNS(Markup.XHTML, name);
        if (!style.isEmpty()) {
            element.setAttribute("class", style);
        }
        if (!text.isEmpty()) {
            element.appendChild(page.createTextNode(text));
        }
        return element;
    }
}
