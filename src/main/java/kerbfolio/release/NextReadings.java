package kerbfolio.release;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import kerbfolio.check.Examination;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.source.Table;

/** Ranks what is missing: what lifts most for the fewest minutes stands first. */
final class NextReadings {
    private static final int COLUMNS = 3;

    private NextReadings() {}

    /**
     * One entry for each errand, not for each key.
     *
     * @param rows findings some gate requires
     */
    static List<NextReading> of(List<Examination.Row> rows) {
        Map<String, String> costs = Table.of("next-readings").rows();
        var paths = new LinkedHashMap<String, Set<String>>();
        var findings = new LinkedHashMap<String, Set<String>>();
        for (Examination.Row row : rows) {
            if (row.verdict() == Verdict.NO_EVIDENCE) {
                for (Absent absent : row.finding().result().missing()) {
                    String errand = errand(absent.path(), costs);
                    paths.computeIfAbsent(errand, key -> new LinkedHashSet<>()).add(absent.path());
                    findings.computeIfAbsent(errand, key -> new LinkedHashSet<>())
                            .add(row.id());
                }
            }
        }
        var next = new ArrayList<NextReading>();
        findings.forEach((errand, lifted) -> next.add(
                reading(errand, costs, List.copyOf(paths.getOrDefault(errand, Set.of())), List.copyOf(lifted))));
        next.removeIf(reading -> reading.minutes() == 0); // too late for this car
        next.sort(Comparator.comparingDouble(
                        (NextReading r) -> -(double) r.findings().size() / r.minutes())
                .thenComparing(NextReading::what));
        return List.copyOf(next);
    }

    /** The longest pattern that fits says what the errand is; without one the path itself does. */
    private static String errand(String path, Map<String, String> costs) {
        return costs.keySet().stream()
                .filter(pattern -> path.matches(regex(pattern)))
                .max(Comparator.comparingInt(String::length))
                .orElse(path);
    }

    private static String regex(String pattern) {
        return ("\\Q" + pattern.replace("*", "\\E.*\\Q") + "\\E");
    }

    private static NextReading reading(
            String errand, Map<String, String> costs, List<String> paths, List<String> findings) {
        String row = costs.get(errand);
        if (row == null) {
            return new NextReading("record " + errand, "", 10, paths, findings);
        }
        String[] columns = row.split(Pattern.quote(";"), COLUMNS);
        return new NextReading(columns[0], columns[1], Integer.parseInt(columns[2].strip()), paths, findings);
    }
}
