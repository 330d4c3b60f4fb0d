package kerbfolio.reading;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Second pass: a tree of texts to records. It complains and goes on: what cannot be read is absent, and where it may
 * not be absent a stand-in takes its place, so that the rest is still examined. No stand-in leaves the reader, because
 * its complaint stops the file.
 */
final class Binder {
    private final ComplaintBook complaints;
    private final Map<Class<?>, Shape> shapes = new HashMap<>();

    Binder(ComplaintBook complaints) {
        this.complaints = complaints;
    }

    /** The record of a whole file, or null if not even a record with stand-ins can be made. */
    <T extends Record> @Nullable T bind(Node root, Class<T> type) {
        try {
            return type.cast(value(root, new Shape.Key(type, true, null)));
        } catch (Unfit e) {
            return null;
        }
    }

    private @Nullable Object value(Node node, Shape.Key key) {
        Class<?> raw = raw(key.type());
        Object value;
        if (node.is(Node.Kind.REFUSED)) {
            value = raw == Unread.class ? new Unread(0) : null;
        } else if (raw == Unread.class) {
            value = new Unread(
                    node.is(Node.Kind.BLANK)
                            ? 0
                            : node.entries().size() + node.keys().size());
        } else if (raw.isRecord() && !Scalars.reads(raw)) {
            value = record(node, raw);
        } else if (raw == List.class) {
            value = list(node, key);
        } else if (raw == Map.class) {
            value = map(node, key);
        } else {
            value = text(node, raw, key);
        }
        return value == null && key.must() ? standIn(key) : value;
    }

    private @Nullable Object record(Node node, Class<?> raw) {
        Shape shape = shapes.computeIfAbsent(raw, Shape::of);
        if (!node.is(Node.Kind.KEYS)) {
            complaints.add(node, "takes keys, each on its own line below it: " + names(shape.keys()));
            return null;
        }
        int before = complaints.size();
        Set<String> meant = refuseUnknown(node, shape);
        Object[] values = shape.keys().entrySet().stream()
                .map(key -> component(node, key.getKey(), key.getValue(), meant))
                .toArray();
        return made(node, shape, values, before);
    }

    private @Nullable Object component(Node node, String name, Shape.Key key, Set<String> meant) {
        Node child = node.keys().get(name);
        if (child == null || (child.is(Node.Kind.BLANK) && raw(key.type()) != Unread.class)) {
            if (key.must() && meant.contains(name)) {
                return standIn(key);
            }
            if (key.must()) {
                String example =
                        Scalars.reads(raw(key.type())) ? "; write `" + name + ": …`" : "; write it with its keys";
                complaints.addAtKey(child == null ? node : child, "`" + name + "` may not be left out" + example);
                return standIn(key);
            }
            return null;
        }
        return value(child, key);
    }

    private Object made(Node node, Shape shape, @Nullable Object[] values, int before) {
        try {
            return shape.constructor().newInstance(values);
        } catch (InvocationTargetException e) {
            if (complaints.size() == before) {
                if (!(e.getCause() instanceof IllegalArgumentException fault)) {
                    throw new IllegalStateException("a record fails on what it was given", e);
                }
                complaints.add(node, String.valueOf(fault.getMessage()));
            }
            throw new Unfit();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record that cannot be made", e);
        }
    }

    /** Complains of the keys a record does not take, and tells which keys they were most likely meant to be. */
    private Set<String> refuseUnknown(Node node, Shape shape) {
        Set<String> known = shape.keys().keySet();
        var meant = new HashSet<String>();
        node.keys().forEach((name, child) -> {
            if (!known.contains(name) && !name.equals("<<")) {
                complaints.addAtKey(child, "unknown key " + Quoted.of(name) + Nearest.hint(name, known));
                Nearest.to(name, known).ifPresent(meant::add);
            }
        });
        return meant;
    }

    private @Nullable Object list(Node node, Shape.Key key) {
        if (!node.is(Node.Kind.LIST)) {
            complaints.add(node, "takes a list: begin each entry with `- ` on its own line below it");
            return null;
        }
        var list = new ArrayList<Object>();
        var ids = new HashSet<String>();
        for (Node entry : node.entries()) {
            if (!entry.id().isEmpty() && !ids.add(entry.id())) {
                complaints.add(
                        entry.keys().getOrDefault("id", entry),
                        Quoted.of(entry.id()) + " is the id of two entries; give one another id");
            }
            list.add(entry(entry, argument(key, 0)));
        }
        return Collections.unmodifiableList(list);
    }

    /** What cannot be read keeps its seat, so that the entries after it keep their number. */
    private Object entry(Node entry, Shape.Key of) {
        if (entry.is(Node.Kind.BLANK)) {
            complaints.add(entry, "an entry with nothing in it; fill it or take it out");
            return standIn(of);
        }
        return Objects.requireNonNull(value(entry, of), "a stand-in at least");
    }

    private @Nullable Object map(Node node, Shape.Key key) {
        if (!node.is(Node.Kind.KEYS)) {
            complaints.add(node, "takes names, each with its content below it");
            return null;
        }
        var map = new LinkedHashMap<String, Object>();
        node.keys().forEach((name, child) -> map.put(name, entry(child, argument(key, 1))));
        return Collections.unmodifiableMap(map);
    }

    private @Nullable Object text(Node node, Class<?> raw, Shape.Key key) {
        if (node.is(Node.Kind.KEYS) || node.is(Node.Kind.LIST)) {
            String found = node.is(Node.Kind.KEYS) ? "keys" : "a list";
            complaints.add(node, "takes one value, not " + found + "; write it after the `:` in the same line");
            return null;
        }
        if (node.text().isBlank()) {
            if (key.must()) {
                complaints.add(node, "may not be empty; write its value or a word in its place");
            }
            return null; // blank is not written: "" answers nothing that is asked
        }
        try {
            return Scalars.read(node.text(), raw, key.in());
        } catch (IllegalArgumentException e) {
            complaints.add(node, String.valueOf(e.getMessage()));
            return null;
        }
    }

    private Object standIn(Shape.Key key) {
        Class<?> raw = raw(key.type());
        if (raw == List.class) {
            return List.of();
        }
        if (raw == Map.class) {
            return Map.of();
        }
        if (Scalars.reads(raw)) {
            return Scalars.standIn(raw);
        }
        Shape shape = shapes.computeIfAbsent(raw, Shape::of);
        Object[] values = shape.keys().values().stream()
                .map(inner -> inner.must() ? standIn(inner) : null)
                .toArray();
        return made(new Node(Node.Kind.BLANK, null, "", 0, 0, ""), shape, values, -1);
    }

    private static Shape.Key argument(Shape.Key key, int index) {
        return new Shape.Key(((ParameterizedType) key.type()).getActualTypeArguments()[index], true, key.in());
    }

    private static Class<?> raw(Type type) {
        return (Class<?>) (type instanceof ParameterizedType parameterized ? parameterized.getRawType() : type);
    }

    private static String names(Map<String, Shape.Key> keys) {
        return String.join(", ", keys.keySet());
    }

    /** A record that takes no stand-ins: the file's meaning is not examined, its complaints stand. */
    private static final class Unfit extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Unfit() {
            super(null, null, false, false);
        }
    }
}
