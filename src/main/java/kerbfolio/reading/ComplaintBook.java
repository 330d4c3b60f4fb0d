package kerbfolio.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects what is wrong with one file, so that everything is said at once. */
public final class ComplaintBook {
    /** More than anybody corrects in one sitting; a hostile file shall not fill a disk with complaints. */
    private static final int MOST = 200;

    private static final Comparator<Complaint> BY_PLACE =
            Comparator.comparingInt(Complaint::line).thenComparingInt(Complaint::column);

    private final Text text;
    private final Places places;
    private final List<Complaint> list = new ArrayList<>();

    ComplaintBook(Text text, Places places, List<Complaint> already) {
        this.text = text;
        this.places = places;
        list.addAll(already);
    }

    /** Complains about what is written at a path such as {@code parts[drive-unit].mass}, or of what is missing there. */
    public void add(String path, String what) {
        add(places.nearest(path), what);
    }

    /** Complains of a value if it is written, and else of the key or entry it belongs to. */
    void add(Node node, String what) {
        list.add(text.complaint(node, what));
    }

    void addAtKey(Node node, String what) {
        list.add(text.complaint(node.keyStart, node.words(), what));
    }

    int size() {
        return list.size();
    }

    void throwIfAny() throws Complaints {
        if (list.isEmpty()) {
            return;
        }
        var sorted = new ArrayList<>(list.stream().sorted(BY_PLACE).limit(MOST).toList());
        if (list.size() > MOST) {
            Complaint last = sorted.get(MOST - 1);
            sorted.add(new Complaint(
                    last.file(),
                    last.line(),
                    last.column(),
                    "",
                    (list.size() - MOST) + " more complaints follow; correct these and read the file again"));
        }
        throw new Complaints(sorted);
    }
}
