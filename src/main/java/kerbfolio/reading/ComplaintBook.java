package kerbfolio.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file, so that everything is said at once. */
public final class ComplaintBook {
    /** More than anybody corrects in one sitting; a hostile file shall not fill a screen, or an hour, with complaints. */
    static final int MOST = 200;

    static final String TOO_MANY = "more complaints than these; correct these and read the file again";

    private static final Comparator<Complaint> BY_PLACE =
            Comparator.comparingInt(Complaint::line).thenComparingInt(Complaint::column);

    private final Text text;
    private final Places places;
    private final List<Complaint> list = new ArrayList<>();
    private int size;

    ComplaintBook(Text text, Places places, List<Complaint> already) {
        this.text = text;
        this.places = places;
        list.addAll(already);
        size = already.size();
    }

    /** Complains about what is written at a path such as {@code parts[drive-unit].mass}, or of what is missing there. */
    public void add(String path, String what) {
        add(places.nearest(path), what);
    }

    /** Complains of a value if it is written, and else of the key or entry it belongs to. */
    void add(Node node, String what) {
        add(node, node.pointer(), what);
    }

    void addAtKey(Node node, String what) {
        add(node, node.keyStart, what);
    }

    private void add(Node node, int at, String what) {
        size++;
        if (list.size() < 5 * MOST) {
            list.add(text.complaint(at, node.words(), what));
        }
    }

    int size() {
        return size;
    }

    void throwIfAny() throws Complaints {
        if (list.isEmpty()) {
            return;
        }
        var sorted = new ArrayList<>(list.stream().sorted(BY_PLACE).limit(MOST).toList());
        if (size > MOST) {
            Complaint last = sorted.get(MOST - 1);
            sorted.add(new Complaint(last.file(), last.line(), last.column(), "", TOO_MANY));
        }
        throw new Complaints(sorted);
    }
}
