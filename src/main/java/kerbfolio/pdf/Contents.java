package kerbfolio.pdf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * What follows from the headings of a page, so that no template has to keep it in step: each part ({@code h1}) and
 * section ({@code h2}) gets its number and a place to be led to; {@code <div class="contents"/>} is filled with them, the
 * reader's bookmarks are made of them and of each {@code h3} that has an id, and an empty link to a place shows the
 * number of the section it stands in.
 */
final class Contents {
    private final Document page;
    private final List<Entry> parts = new ArrayList<>();
    private final Map<String, String> numbers = new LinkedHashMap<>();

    /** A heading with the place it stands at, and the headings below it. */
    private record Entry(String number, String title, String id, List<Entry> below) {
        String words() {
            return number.isEmpty() ? title : number + " " + title;
        }
    }

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
        String number = "";
        for (Element element : Markup.elements(page)) {
            Entry entry = heading(element);
            number = entry == null || entry.number().isEmpty() ? number : entry.number();
            if (!number.isEmpty() && element.hasAttribute("id")) {
                numbers.putIfAbsent(element.getAttribute("id"), number);
            }
        }
    }

    /** Enters a heading; one without words leads nowhere, and a deeper one is found from its section unless it has an id. */
    private @Nullable Entry heading(Element element) {
        List<Entry> sections = last(parts);
        String name = element.getNodeName().toLowerCase(Locale.ROOT);
        if (element.getTextContent().isBlank()) {
            return null;
        }
        if (name.equals("h1")) {
            return enter(element, String.valueOf(parts.size() + 1), parts);
        }
        if (name.equals("h2") && sections != null) {
            return enter(element, parts.size() + "." + (sections.size() + 1), sections);
        }
        List<Entry> questions = sections == null ? null : last(sections);
        return name.equals("h3") && element.hasAttribute("id") && questions != null
                ? enter(element, "", questions)
                : null;
    }

    private static @Nullable List<Entry> last(List<Entry> entries) {
        return entries.isEmpty() ? null : entries.get(entries.size() - 1).below();
    }

    private Entry enter(Element heading, String number, List<Entry> around) {
        if (!heading.hasAttribute("id")) {
            heading.setAttribute("id", "section-" + number.replace('.', '-'));
        }
        String title = heading.getTextContent().replaceAll("\\s+", " ").strip();
        if (!number.isEmpty()) {
            heading.insertBefore(element("span", "number", number + " "), heading.getFirstChild());
        }
        var entry = new Entry(number, title, heading.getAttribute("id"), new ArrayList<>());
        around.add(entry);
        return entry;
    }

    private void list() {
        for (Element place : elements("div")) {
            if ("contents".equals(place.getAttribute("class"))) {
                for (Entry part : parts) {
                    Element list = element("ul", "plain", "");
                    list.appendChild(line(part, "part-line"));
                    part.below().forEach(section -> list.appendChild(line(section, "section-line")));
                    place.appendChild(list);
                }
            }
        }
    }

    private Element line(Entry entry, String style) {
        Element line = element("li", style, "");
        Element link = element("a", "entry", entry.words());
        link.setAttribute("href", "#" + entry.id());
        line.appendChild(link);
        return line;
    }

    private void bookmarks() {
        Element tree = element("bookmarks", "", "");
        parts.forEach(part -> tree.appendChild(bookmark(part)));
        elements("head").get(0).appendChild(tree);
    }

    private Element bookmark(Entry entry) {
        Element mark = element("bookmark", "", "");
        mark.setAttribute("name", entry.words());
        mark.setAttribute("href", "#" + entry.id());
        entry.below().forEach(below -> mark.appendChild(bookmark(below)));
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
