package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;

/** Names in one run; what several of them say behind a comma is said once: {@code front, rear: closed; front: opened}. */
final class Listing {
    private static final String COMMA = ", ";

    private Listing() {}

    static String of(List<String> names) {
        if (names.size() == 1) {
            return names.get(0);
        }
        var runs = new LinkedHashMap<String, List<String>>();
        for (String name : names) {
            int comma = name.indexOf(COMMA);
            String tail = comma < 0 ? "" : ": " + name.substring(comma + COMMA.length());
            runs.computeIfAbsent(tail, key -> new ArrayList<>()).add(comma < 0 ? name : name.substring(0, comma));
        }
        var said = new ArrayList<String>();
        runs.forEach((tail, heads) -> said.add(String.join(COMMA, heads) + tail));
        return String.join("; ", said);
    }
}
