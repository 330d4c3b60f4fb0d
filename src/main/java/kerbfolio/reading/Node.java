package kerbfolio.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One place of a file: a text, a set of keys, a list, or nothing written; it knows where it stands. */
final class Node {
    enum Kind {
        TEXT,
        BLANK,
        /** Written, and complained of already. */
        REFUSED,
        KEYS,
        LIST
    }

    private Kind kind;
    final @Nullable Node parent;

    /** The key it stands under; empty for the root and for entries of a list. */
    final String key;

    /** Its number among the entries of a list, from 0. */
    private final int index;

    /** Where its key begins, or where it begins itself if it has none. */
    final int keyStart;

    /** Where it begins and ends, in characters of the text; quotes belong to it. */
    final int start;

    private int end;
    private final String text;
    private final Map<String, Node> keys = new LinkedHashMap<>();
    private final List<Node> entries = new ArrayList<>();

    Node(Kind kind, @Nullable Node parent, String key, int keyStart, int start, String text) {
        this.kind = kind;
        this.parent = parent;
        this.key = key;
        this.index = parent == null ? 0 : parent.entries.size();
        this.keyStart = keyStart;
        this.start = start;
        this.end = start;
        this.text = text;
    }

    /** Nothing more is to be said about it. */
    void refuse() {
        kind = Kind.REFUSED;
    }

    void endsAt(int place) {
        end = place;
    }

    int end() {
        return end;
    }

    /** Exactly what was written, without quotes: {@code 0012345} and {@code no} stay what they are. */
    String text() {
        return text;
    }

    Map<String, Node> keys() {
        return keys;
    }

    List<Node> entries() {
        return entries;
    }

    /** The same without its places: maps, lists and texts. */
    Object loose() {
        return switch (kind) {
            case KEYS -> {
                var map = new LinkedHashMap<String, Object>();
                keys.forEach((name, child) -> map.put(name, child.loose()));
                yield map;
            }
            case LIST -> entries.stream().map(Node::loose).toList();
            case TEXT, BLANK, REFUSED -> kind == Kind.TEXT ? text : "";
        };
    }

    boolean is(Kind asked) {
        return kind == asked;
    }

    /** Where a reader's eye should go: to the value if it is written, and else to its key. */
    int pointer() {
        return kind == Kind.TEXT || kind == Kind.REFUSED ? start : keyStart;
    }

    /** Texts, keys and lists below and including this one. */
    int size() {
        int size = 1;
        for (Node child : children()) {
            size += child.size();
        }
        return size;
    }

    Iterable<Node> children() {
        return kind == Kind.LIST ? entries : keys.values();
    }

    /** Dotted, list entries by their id or counted from 0: {@code parts[drive-unit].mass}. */
    String path() {
        if (parent == null) {
            return "";
        }
        if (parent.kind == Kind.LIST) {
            String id = id();
            return parent.path() + "[" + (id.isEmpty() ? String.valueOf(index) : id) + "]";
        }
        return parent.parent == null ? key : parent.path() + "." + key;
    }

    /** The same for people: {@code parts > drive-unit > mass}, entries without an id counted from 1. */
    String words() {
        if (parent == null) {
            return "";
        }
        String step = key;
        if (parent.kind == Kind.LIST) {
            String id = id();
            step = id.isEmpty() ? "entry " + (index + 1) : id;
        }
        return parent.parent == null ? step : parent.words() + " > " + step;
    }

    /** The id an entry of a list carries; empty if it carries none, or one too long to be a name. */
    String id() {
        Node id = keys.get("id");
        return id != null && id.kind == Kind.TEXT && id.text.length() <= Tokens.MOST_OF_A_KEY ? id.text : "";
    }
}
