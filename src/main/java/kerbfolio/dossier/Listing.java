package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * Names in one run; what several of them have before or behind a comma is said once: {@code front, rear: closed},
 * {@code monitor: high, low}.
 */
final class Listing {
    private static final String COMMA = ", ";

    private Listing() {}

    static String of(List<String> names) {
        if (names.size() == 1) {
            return names.get(0);
        }
        Map<String, List<String>> byTail = grouped(names, Listing::tail, Listing::head);
        Map<String, List<String>> byHead = grouped(names, Listing::head, Listing::tail);
        var said = new ArrayList<String>();
        if (byHead.size() < byTail.size()) {
            byHead.forEach((head, tails) -> said.add(said(head, String.join(COMMA, tails))));
        } else {
            byTail.forEach((tail, heads) -> said.add(said(String.join(COMMA, heads), tail)));
        }
        return String.join("; ", said);
    }

    private static Map<String, List<String>> grouped(
            List<String> names, UnaryOperator<String> by, UnaryOperator<String> rest) {
        return names.stream()
                .collect(Collectors.groupingBy(by, LinkedHashMap::new, Collectors.mapping(rest, Collectors.toList())));
    }

    private static String said(String head, String tail) {
        return tail.isEmpty() ? head : head + ": " + tail;
    }

    private static String head(String name) {
        int comma = name.indexOf(COMMA);
        return comma < 0 ? name : name.substring(0, comma);
    }

    private static String tail(String name) {
        int comma = name.indexOf(COMMA);
        return comma < 0 ? "" : name.substring(comma + COMMA.length());
    }
}
