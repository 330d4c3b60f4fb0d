package kerbfolio.pdf;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfIndirectReference;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfNumber;
import com.lowagie.text.pdf.PdfObject;
import com.lowagie.text.pdf.PdfString;
import com.lowagie.text.pdf.PdfStructureElement;
import com.lowagie.text.pdf.PdfWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One element of the document's structure (ISO 32000-1, 14.7): what it is, and what lies in it. Its place in the text
 * decides the reading order, whenever it is painted; and it only gets into the file if something of it is painted.
 */
final class Tag {
    /** Something in a tag: painted content, or a tag, and where it stands in the text. */
    private record Kid(int place, PdfObject content) {}

    private final Role role;
    private final @Nullable Tag parent;
    private final int place;
    private final boolean between;
    private final List<Tag> below = new ArrayList<>();
    private final List<Kid> painted = new ArrayList<>();
    private final PdfDictionary properties = new PdfDictionary();
    private @Nullable PdfStructureElement element;

    private Tag(Role role, @Nullable Tag parent, int place, boolean between) {
        this.role = role;
        this.parent = parent;
        this.place = place;
        this.between = between;
    }

    static Tag document() {
        return new Tag(Role.DOCUMENT, null, 0, false);
    }

    Role role() {
        return role;
    }

    boolean isLeaf() {
        return below.isEmpty();
    }

    /** A new tag in this one, or in what must lie between; a member with nothing to belong to is a plain division. */
    Tag child(Role wanted, int at) {
        Tag home = home(wanted, at);
        boolean homeless = wanted.isMember() && !home.role.holdsMembers();
        return home.add(homeless ? Role.DIV : wanted, at, false);
    }

    /** Where something of a role that stands in this element really lies; neighbours share what is put between. */
    Tag home(Role kid, int at) {
        Role needed = role.between(kid);
        if (needed == null) {
            return this;
        }
        Tag last = below.isEmpty() ? null : below.get(below.size() - 1);
        if (last == null || !last.between || last.role != needed) {
            last = add(needed, at, true);
        }
        return last.home(kid, at);
    }

    private Tag add(Role kid, int at, boolean isBetween) {
        Tag tag = new Tag(kid, this, at, isBetween);
        below.add(tag);
        return tag;
    }

    /** The link this lies in, or is. */
    @Nullable
    Tag link() {
        if (role == Role.LINK) {
            return this;
        }
        return parent == null ? null : parent.link();
    }

    /** Says something of it in words: a description, an expansion, a language. */
    void say(PdfName key, String words) {
        properties.put(key, new PdfString(words, PdfObject.TEXT_UNICODE));
    }

    /** Gives it an attribute of one owner (ISO 32000-1, 14.8.5). */
    void attribute(String owner, String key, PdfObject value) {
        PdfDictionary attributes = properties.getAsDict(PdfName.A);
        if (attributes == null) {
            attributes = new PdfDictionary();
            attributes.put(PdfName.O, new PdfName(owner));
            properties.put(PdfName.A, attributes);
        }
        attributes.put(new PdfName(key), value);
    }

    /** Begins painting something of this. */
    void begin(PdfContentByte page, int at) {
        PdfStructureElement written = written(page.getPdfWriter());
        page.beginMarkedContentSequence(written);
        var mark = new PdfDictionary(PdfName.MCR);
        mark.put(PdfName.PG, page.getPdfWriter().getCurrentPage());
        mark.put(PdfName.MCID, written.get(PdfName.K));
        written.remove(PdfName.K);
        painted.add(new Kid(at, mark));
    }

    /** Ties an annotation to this, and returns the number by which it is found. */
    PdfNumber annotated(PdfWriter writer, PdfIndirectReference annotation) {
        var reference = new PdfDictionary(PdfName.OBJR);
        reference.put(PdfName.PG, writer.getCurrentPage());
        reference.put(PdfName.OBJ, annotation);
        painted.add(new Kid(Integer.MAX_VALUE, reference));
        return new PdfNumber(
                writer.getStructureTreeRoot().addExistingObject(written(writer).getReference()));
    }

    /**
     * The element in the file. The library refuses marks beside tags in one element, so it never gets to see both: what
     * lies in an element is taken out at once, and put together at the end.
     */
    private PdfStructureElement written(PdfWriter writer) {
        if (element == null) {
            element = parent == null
                    ? new PdfStructureElement(writer.getStructureTreeRoot(), role.type())
                    : parent.bear(writer, role);
        }
        return element;
    }

    private PdfStructureElement bear(PdfWriter writer, Role kid) {
        PdfStructureElement above = written(writer);
        var born = new PdfStructureElement(above, kid.type());
        above.remove(PdfName.K);
        return born;
    }

    /** Writes down what was painted, in reading order. A row keeps its empty cells, and a table without rows a body. */
    void finish(PdfWriter writer) {
        PdfStructureElement written = element;
        if (written == null) {
            return;
        }
        if (role == Role.TR) {
            below.forEach(cell -> cell.written(writer));
        }
        if (role == Role.TABLE && below.stream().noneMatch(part -> part.role == Role.T_BODY && part.element != null)) {
            add(Role.T_BODY, Integer.MAX_VALUE, true).written(writer);
        }
        below.forEach(tag -> tag.finish(writer));
        written.putAll(properties);
        List<PdfObject> inside = inside();
        if (!inside.isEmpty()) {
            written.put(PdfName.K, new PdfArray(inside));
        }
    }

    private List<PdfObject> inside() {
        List<Kid> tags = new ArrayList<>();
        for (Tag tag : below) {
            if (tag.element != null) {
                tags.add(new Kid(tag.place, tag.element));
            }
        }
        return Stream.concat(painted.stream(), tags.stream())
                .sorted(Comparator.comparingInt(Kid::place))
                .map(Kid::content)
                .map(content -> tags.isEmpty() ? brief(content) : content)
                .toList();
    }

    /** A mark on the tag's own page is known by its number alone. The library takes such only where no tags are. */
    private PdfObject brief(PdfObject content) {
        PdfDictionary mark = (PdfDictionary) content;
        boolean here = element != null && element.get(PdfName.PG) == mark.get(PdfName.PG);
        PdfObject number = mark.get(PdfName.MCID);
        return here && number != null ? number : content;
    }
}
