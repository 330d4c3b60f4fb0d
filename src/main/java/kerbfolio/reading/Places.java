package kerbfolio.reading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Where everything stands in a file, by path: {@code weighings.tilt.steps[0].rise}, {@code parts[drive-unit].mass}. */
public final class Places {
    private final Text text;
    private final Node root;
    private final Map<String, Node> nodes = new LinkedHashMap<>();

    Places(Text text, Node root) {
        this.text = text;
        this.root = root;
        enter(root);
    }

    private void enter(Node node) {
        nodes.putIfAbsent(node.path(), node);
        node.children().forEach(this::enter);
    }

    /** The file's text without a byte order mark: what {@link Place#start} counts in. */
    public String text() {
        return text.text();
    }

    /** Everything written in the file, in its order; the first is the file itself, an empty path. */
    public List<String> paths() {
        return List.copyOf(nodes.keySet());
    }

    /** Where a value is written, to be replaced there; empty for keys, lists, and what the file does not hold. */
    public Optional<Place> written(String path) {
        Node node = nodes.get(path);
        return node != null && node.is(Node.Kind.TEXT)
                ? Optional.of(text.place(node.start, node.end()))
                : Optional.empty();
    }

    /** Where to point a reader at: the value, or the key of the nearest section the file does hold. */
    public Place at(String path) {
        Node node = nearest(path);
        return text.place(node.pointer(), node.end());
    }

    /** One complaint of what is written at a path, by somebody who cannot go on. */
    public Complaints refusal(String path, String what) {
        return new Complaints(List.of(text.complaint(nearest(path), what)));
    }

    Node nearest(String path) {
        for (String at = path; !at.isEmpty(); at = parent(at)) {
            @Nullable Node node = nodes.get(at);
            if (node != null) {
                return node;
            }
        }
        return root;
    }

    private static String parent(String path) {
        return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
    }
}
