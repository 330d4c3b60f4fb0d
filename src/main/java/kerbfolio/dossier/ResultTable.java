package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.WorkingsPart.Compared;
import kerbfolio.dossier.WorkingsPart.Line;

/**
 * The rows of a question as paper shows them: rows that say the same are joined, never those not met; what all of them
 * say stands once below.
 *
 * @param rows in the order of their first subject
 * @param notes what stands below the table
 */
public record ResultTable(List<Row> rows, List<String> notes) {
    private static final String SAME_LIMIT = "the same limit";

    /** One or several subjects of which the same was found. */
    public record Row(
            String subjects, Shown value, String limit, Verdict verdict, String remark, List<Compared> compared) {}

    static ResultTable of(List<Line> found) {
        List<Line> lines = found.stream().map(ResultTable::withoutName).toList();
        Set<String> shared = shared(lines);
        Map<String, String> marks = marks(lines, shared);
        List<Compared> agreed = agreed(lines);
        var joined = new LinkedHashMap<Row, List<Line>>();
        for (Line line : lines) {
            String own = line.verdict() == Verdict.NOT_MET ? line.subject() : "";
            List<Compared> compared = line.compared().stream()
                    .filter(other -> agreed.stream().noneMatch(one -> one.set().equals(other.set())))
                    .toList();
            var key = new Row(own, line.value(), line.limit(), line.verdict(), remark(line, shared, marks), compared);
            joined.computeIfAbsent(key, fresh -> new ArrayList<>()).add(line);
        }
        var rows = new ArrayList<Row>();
        joined.forEach((key, same) -> rows.add(new Row(
                Listing.of(same.stream().map(Line::subject).toList()),
                key.value(),
                key.limit(),
                key.verdict(),
                key.remark().equals(Line.NOT_RECORDED) ? lacking(same) : key.remark(),
                key.compared())));
        return new ResultTable(List.copyOf(rows), notes(shared, marks, agreed));
    }

    /** What several rows lack, each thing named once. */
    static String lacking(List<Line> lines) {
        return lines.stream()
                .flatMap(line -> Stream.of(
                        line.said().substring(Line.NOT_RECORDED.length()).split(", ")))
                .distinct()
                .collect(Collectors.joining(", ", Line.NOT_RECORDED, ""));
    }

    /** The same with its subject not named again, so that two rows may say one thing. */
    private static Line withoutName(Line line) {
        Pattern name = Pattern.compile(
                "\\b(of|on|before) " + Pattern.quote(line.subject().replaceFirst(",.*", "")) + "(?![\\w-])");
        UnaryOperator<String> plain = words -> name.matcher(words).replaceAll("$1 it");
        return new Line(
                line.id(),
                line.subject(),
                line.value(),
                line.limit(),
                line.verdict(),
                plain.apply(line.said()),
                line.doubts().stream().map(plain).toList(),
                line.compared());
    }

    private static String remark(Line line, Set<String> shared, Map<String, String> marks) {
        if (line.isUnrecorded()) {
            return Line.NOT_RECORDED;
        }
        List<String> own =
                line.doubts().stream().filter(doubt -> !shared.contains(doubt)).toList();
        Stream<String> unmarked = own.stream().filter(doubt -> !marks.containsKey(doubt));
        String letters =
                own.stream().filter(marks::containsKey).map(marks::get).collect(Collectors.joining(", ", "(", ")"));
        String words = Stream.concat(Stream.of(line.said()), unmarked)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return (words + (letters.equals("()") ? "" : " " + letters)).strip();
    }

    /** What every doubted row has in doubt. */
    private static Set<String> shared(List<Line> lines) {
        List<List<String>> doubts =
                lines.stream().map(Line::doubts).filter(own -> !own.isEmpty()).toList();
        var shared = new LinkedHashSet<String>();
        if (!doubts.isEmpty()) {
            shared.addAll(doubts.get(0));
            doubts.forEach(shared::retainAll);
        }
        return shared;
    }

    /** A letter for what some rows have in doubt and not all. */
    private static Map<String, String> marks(List<Line> lines, Set<String> shared) {
        Map<String, Long> counts = lines.stream()
                .flatMap(line -> line.doubts().stream().distinct())
                .filter(doubt -> !shared.contains(doubt))
                .collect(Collectors.groupingBy(doubt -> doubt, LinkedHashMap::new, Collectors.counting()));
        var marks = new LinkedHashMap<String, String>();
        counts.forEach((doubt, rows) -> {
            if (rows > 1) {
                marks.put(doubt, letter(marks.size()));
            }
        });
        return marks;
    }

    private static String letter(int place) {
        return place < 26 ? String.valueOf((char) ('a' + place)) : letter(place / 26 - 1) + letter(place % 26);
    }

    /** Sets that ask of every row one thing, or what the home set asks, and come to its verdict. */
    private static List<Compared> agreed(List<Line> lines) {
        List<Line> judged = lines.stream()
                .filter(line -> line.verdict() != Verdict.NO_LIMIT && line.verdict() != Verdict.NOT_APPLICABLE)
                .toList();
        return judged.stream()
                .limit(1)
                .flatMap(line -> line.compared().stream())
                .flatMap(one -> Stream.of(SAME_LIMIT, one.limit())
                        .filter(limit -> judged.stream().allMatch(line -> isAsked(line, one.set(), limit)))
                        .limit(1)
                        .map(limit -> new Compared(one.set(), limit, one.verdict(), one.citation())))
                .toList();
    }

    private static boolean isAsked(Line line, String set, String limit) {
        String asked = limit.equals(SAME_LIMIT) ? line.limit() : limit;
        return line.compared().stream()
                .anyMatch(other ->
                        other.set().equals(set) && other.limit().equals(asked) && other.verdict() == line.verdict());
    }

    private static List<String> notes(Set<String> shared, Map<String, String> marks, List<Compared> agreed) {
        var notes = new ArrayList<String>();
        // That the limit itself is unconfirmed stands beside the limit.
        if (shared.stream().anyMatch(doubt -> !doubt.equals(Line.LIMIT_UNCONFIRMED))) {
            notes.add("Unconfirmed: " + String.join("; ", shared));
        }
        marks.forEach((doubt, letter) -> notes.add("(" + letter + ") " + doubt));
        agreed.forEach(one ->
                notes.add("For comparison, " + one.set() + ": " + one.limit() + ", the same verdict for every row"));
        return List.copyOf(notes);
    }
}
