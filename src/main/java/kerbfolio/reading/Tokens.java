package kerbfolio.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * First pass: a YAML or JSON text to a tree of texts, each with its place. Nothing is taken for a number here, or a
 * serial number 0012345 would lose its noughts. What could make a small file large (aliases), ambiguous (a key twice, a
 * second document) or endless (depth, size) is refused.
 */
final class Tokens {
    static final int MOST_BYTES = 3_000_000;
    static final int MOST_ENTRIES = 20_000;
    static final int MOST_CHARACTERS = 20_000;
    static final int MOST_OF_A_KEY = 100;
    static final int MOST_LEVELS = 32;

    /** The library's own limits lie beyond ours, so that ours are the ones complained of. */
    private static final StreamReadConstraints BEYOND = StreamReadConstraints.builder()
            .maxStringLength(2 * MOST_BYTES)
            .maxNameLength(2 * MOST_BYTES)
            .maxNumberLength(2 * MOST_BYTES)
            .build();

    private final Text text;
    private final JsonParser parser;
    private final Offsets offsets;
    private final List<Complaint> complaints;
    private int count;

    private Tokens(Text text, JsonParser parser, Offsets offsets, List<Complaint> complaints) {
        this.text = text;
        this.parser = parser;
        this.offsets = offsets;
        this.complaints = complaints;
    }

    /** A tree, and what is wrong with it so far. */
    record Tree(Node root, List<Complaint> complaints) {}

    static Tree tree(Text text) throws Complaints {
        boolean json = text.name().toLowerCase(Locale.ROOT).endsWith(".json");
        JsonFactory factory = json
                ? JsonFactory.builder().streamReadConstraints(BEYOND).build()
                : YAMLFactory.builder().streamReadConstraints(BEYOND).build();
        var complaints = new ArrayList<Complaint>();
        try (JsonParser parser = factory.createParser(text.text())) {
            return new Tokens(text, parser, Offsets.of(text.text(), !json), complaints).document();
        } catch (JsonProcessingException e) {
            complaints.add(Grammar.complaint(text, e, json));
            throw new Complaints(complaints);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory could not be read", e);
        }
    }

    private Tree document() throws IOException, Complaints {
        if (parser.nextToken() == null) {
            throw text.refusal(0, "the file is empty; write its keys, or begin with `kerbfolio new`");
        }
        Node root = node(null, "", 0, 0);
        if (parser.nextToken() != null) {
            complain(start(), root, "a second document begins here; one file holds one document, nothing after it");
        }
        return new Tree(root, complaints);
    }

    private Node node(@Nullable Node parent, String key, int keyStart, int depth) throws IOException, Complaints {
        int start = start();
        if (++count > MOST_ENTRIES) {
            throw stop(start, "the file holds more than " + MOST_ENTRIES + " entries; leave out what is no part of it");
        }
        if (depth > MOST_LEVELS) {
            throw stop(start, "nested deeper than " + MOST_LEVELS + " levels; nothing here needs more than ten");
        }
        int from = parent == null || parent.is(Node.Kind.LIST) ? start : keyStart;
        JsonToken token = parser.currentToken();
        Node node = new Node(kind(token), parent, key, from, start, token.isScalarValue() ? parser.getText() : "");
        refuseShorthand(node, start);
        if (token == JsonToken.START_OBJECT) {
            keys(node, depth);
        } else if (token == JsonToken.START_ARRAY) {
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                node.entries().add(node(node, "", 0, depth + 1));
            }
        } else if (refuseOdd(node.text(), start, node)) {
            node.refuse();
        }
        node.endsAt(end());
        return node;
    }

    private void keys(Node node, int depth) throws IOException, Complaints {
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            int keyStart = start();
            if (key.equals("<<")) {
                complain(keyStart, node, "`<<` merges another section in; write its keys out");
            }
            if (key.length() > MOST_OF_A_KEY) {
                throw stop(keyStart, "a key of more than " + MOST_OF_A_KEY + " characters; no key is that long");
            }
            refuseShorthand(node, keyStart);
            refuseOdd(key, keyStart, node);
            parser.nextToken();
            Node child = node(node, key, keyStart, depth + 1);
            if (node.keys().putIfAbsent(key, child) != null) {
                complain(keyStart, child, Quoted.of(key) + " stands here twice; keep one of the two");
            }
        }
    }

    /** Aliases arrive as if they were texts, tags and the anchors of texts not at all: all would be silently wrong. */
    private void refuseShorthand(Node node, int start) throws Complaints {
        if (!(parser instanceof YAMLParser yaml) || start >= text.text().length()) {
            return;
        }
        char sign = text.text().charAt(start);
        if (yaml.isCurrentAlias()) {
            complain(start, node, word(start) + " refers to another place of the file; write the value out");
            node.refuse();
        } else if (sign == '&') {
            complain(start, node, word(start) + " names a place to refer to; leave the name out");
        } else if (sign == '!') {
            complain(
                    start,
                    node,
                    word(start) + " gives a type; leave it out, or put a text that begins with `!` into quotes");
        }
    }

    private String word(int start) {
        String ahead =
                text.text().substring(start, Math.min(start + 60, text.text().length()));
        return Quoted.of(ahead.split("[\\s,:\\[\\]{}]", 2)[0]);
    }

    private boolean refuseOdd(String written, int start, Node node) throws Complaints {
        if (written.length() > MOST_CHARACTERS) {
            throw stop(
                    start, "a text of more than " + MOST_CHARACTERS + " characters; put it into a document of its own");
        }
        int odd = Text.unprintable(written);
        if (odd >= 0) {
            complain(
                    start,
                    node,
                    "the text holds character " + Text.codePoint(written, odd)
                            + ", which cannot be printed; leave it out");
        }
        return odd >= 0;
    }

    private Node.Kind kind(JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> Node.Kind.KEYS;
            case START_ARRAY -> Node.Kind.LIST;
            case VALUE_NULL -> blank(parser.getText()) ? Node.Kind.BLANK : Node.Kind.TEXT;
            // A key with nothing after it is an empty text without quotes; "" has quotes and is a text.
            case VALUE_STRING -> parser.getText().isEmpty() && end() == start() ? Node.Kind.BLANK : Node.Kind.TEXT;
            default -> Node.Kind.TEXT;
        };
    }

    /** A person may be called Null. */
    private static boolean blank(String written) {
        return written.isEmpty() || written.equals("~") || written.equals("null");
    }

    private int start() {
        return offsets.chars(parser.currentTokenLocation().getCharOffset());
    }

    private int end() {
        return offsets.chars(parser.currentLocation().getCharOffset());
    }

    private void complain(int at, Node node, String what) throws Complaints {
        if (complaints.size() == ComplaintBook.MOST) {
            throw stop(at, ComplaintBook.TOO_MANY);
        }
        complaints.add(text.complaint(at, node.words(), what));
    }

    private Complaints stop(int at, String what) {
        complaints.add(text.complaint(at, "", what));
        return new Complaints(complaints);
    }
}
