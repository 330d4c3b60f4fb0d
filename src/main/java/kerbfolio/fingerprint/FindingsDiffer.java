package kerbfolio.fingerprint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import kerbfolio.reading.Complaints;
import kerbfolio.reading.RecordReader;
import org.jspecify.annotations.Nullable;

/** The findings a dossier was issued with against those of a rerun, where the pages cannot be compared. */
final class FindingsDiffer {
    private static final int MOST_LINES = 12;

    private FindingsDiffer() {}

    /** Sentences that say whether the findings are the same, and which differ. */
    static List<String> sentences(byte[] issued, byte[] again) {
        try {
            Map<String, String> before = lines(issued);
            Map<String, String> now = lines(again);
            Set<String> ids = new LinkedHashSet<>(before.keySet());
            ids.addAll(now.keySet());
            var differing = new ArrayList<String>();
            for (String id : ids) {
                String was = before.getOrDefault(id, "not there");
                String is = now.getOrDefault(id, "not there");
                if (!was.equals(is)) {
                    differing.add(id + ": issued " + was + "; now " + is);
                }
            }
            if (differing.isEmpty()) {
                return List.of("the findings come out the same: " + before.size() + " gates and findings, compared");
            }
            int more = differing.size() - MOST_LINES;
            if (more > 0) {
                differing.subList(MOST_LINES, differing.size()).clear();
                differing.add("and " + more + " more that differ");
            }
            return differing;
        } catch (Complaints e) {
            return List.of("the findings it was issued with are not in a form this program reads");
        }
    }

    /** What was found, by what it is about: gates by their name, findings by their id. */
    private static Map<String, String> lines(byte[] json) throws Complaints {
        var lines = new LinkedHashMap<String, String>();
        if (RecordReader.loose(Issued.FINDINGS, json) instanceof Map<?, ?> file) {
            each(file.get("gates"), gate -> lines.put("gate " + word(gate, "name"), word(gate, "state")));
            each(file.get("findings"), finding -> lines.put(word(finding, "id"), finding(finding)));
        }
        return lines;
    }

    private static String finding(Map<?, ?> finding) {
        String value = word(finding, "value");
        String reach = word(finding, "uncertainty");
        String limit = word(finding, "limit");
        return word(finding, "verdict")
                + (value.isEmpty() ? "" : ", " + value + (reach.isEmpty() ? "" : " ± " + reach))
                + (value.isEmpty() ? "" : " " + word(finding, "unit")).stripTrailing()
                + (limit.isEmpty() ? "" : " (" + limit + ")");
    }

    private interface Entry {
        void read(Map<?, ?> entry);
    }

    private static void each(@Nullable Object list, Entry entry) {
        if (list instanceof List<?> entries) {
            entries.stream().filter(Map.class::isInstance).forEach(one -> entry.read((Map<?, ?>) one));
        }
    }

    private static String word(Map<?, ?> entry, String key) {
        return Objects.toString(entry.get(key), "");
    }
}
