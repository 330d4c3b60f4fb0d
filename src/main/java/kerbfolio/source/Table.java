package kerbfolio.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A published table of two columns that travels with the program: {@code shared/tables/NAME.csv}, whose comment lines say
 * where it is from.
 *
 * @param name file name without its ending
 * @param citation the line that begins with {@code # Source:}
 * @param rows key to figure, in the unit the head line names
 * @param unit unit of the figures, as the head line names it
 */
public record Table(String name, Citation citation, Map<String, String> rows, String unit) {

    /** Whether this program has a table of that name. */
    public static boolean isThere(String name) {
        return name.matches("[a-z-]+") && Table.class.getResource(path(name)) != null;
    }

    private static String path(String name) {
        return "/shared/tables/" + name + ".csv";
    }

    /** Reads a table of this program. */
    public static Table of(String name) {
        String path = path(name);
        try (InputStream in = Table.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("no table " + path);
            }
            return read(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Table read(String name, String text) {
        String source = "";
        String unit = "";
        var rows = new LinkedHashMap<String, String>();
        for (String line : text.lines().toList()) {
            int mark = line.indexOf(';');
            if (line.startsWith("# Source: ")) {
                source = line.substring("# Source: ".length());
            } else if (!line.startsWith("#") && unit.isEmpty()) {
                unit = line.substring(mark + 1);
            } else if (!line.startsWith("#")) {
                rows.put(line.substring(0, mark), line.substring(mark + 1));
            }
        }
        return new Table(name, new Citation(source, ""), Collections.unmodifiableMap(rows), unit);
    }

    /** The figure of a key with its unit, as text; empty if the table has no such row. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(rows.get(key)).map(figure -> figure + " " + unit);
    }
}
