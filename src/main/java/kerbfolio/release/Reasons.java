package kerbfolio.release;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;

/** Gathers what speaks against a gate: what one question found the same way of several subjects is one reason. */
final class Reasons {
    /** What findings that make one reason have in common. */
    private record Kind(Check check, Verdict verdict) {}

    private static final String UNCONFIRMED = "limit not confirmed: ";

    /** Set and clause of a limit, which stand with the findings. */
    private static final String CLAUSE = " \\([\\w-]+, .*\\)$";

    private final List<Reason> others = new ArrayList<>();
    private final Map<Kind, List<Examination.Row>> kinds = new LinkedHashMap<>();
    private final Map<String, List<Examination.Row>> reservations = new LinkedHashMap<>();
    private final Map<Examination.Row, Check> weak = new LinkedHashMap<>();

    void add(Reason reason) {
        others.add(reason);
    }

    /** A finding that is not met, not decided, or of which there is no evidence. */
    void add(Examination examination, Examination.Row row) {
        kinds.computeIfAbsent(new Kind(examination.check(), row.verdict()), key -> new ArrayList<>())
                .add(row);
    }

    /** A finding that is met and leans on what nobody confirmed. */
    void addWeak(Examination examination, Examination.Row row) {
        weak.put(row, examination.check());
        row.finding()
                .reservations()
                .forEach(reservation -> reservations
                        .computeIfAbsent(reservation, key -> new ArrayList<>())
                        .add(row));
    }

    /** All of them, holds first. */
    List<Reason> all() {
        var all = new ArrayList<Reason>();
        kinds.forEach((kind, rows) -> all.add(reason(kind, rows)));
        unconfirmed().forEach(all::add);
        all.addAll(others);
        all.sort(Comparator.comparing(Reason::state));
        return List.copyOf(all);
    }

    private static boolean isUnrecorded(Finding finding) {
        List<Absent> missing = finding.result().missing();
        return !missing.isEmpty() && missing.stream().allMatch(Absent::isUnrecorded);
    }

    private static Reason reason(Kind kind, List<Examination.Row> rows) {
        GateState state = kind.verdict() == Verdict.NOT_MET ? GateState.HELD : GateState.NOT_EXAMINED;
        String what = said(kind.check()) + ", " + subjects(rows) + ": " + kind.verdict();
        String why = switch (kind.verdict()) {
            case NO_EVIDENCE -> " (" + lacks(rows) + ")";
            case NO_LIMIT -> " is given by the home set";
            default -> "";
        };
        return new Reason(state, what + why, ids(rows));
    }

    /** What all lack, or what the one lacks; many reasons stand with the findings. */
    private static String lacks(List<Examination.Row> rows) {
        if (rows.stream().allMatch(row -> isUnrecorded(row.finding()))) {
            return unrecorded(rows);
        }
        List<String> lacks =
                rows.stream().map(row -> row.finding().lack()).distinct().toList();
        return lacks.size() > 2 ? "each for its own reason, said there" : String.join("; ", lacks);
    }

    private static String unrecorded(List<Examination.Row> rows) {
        return rows.stream()
                .flatMap(row -> row.finding().result().missing().stream())
                .map(Absent::name)
                .distinct()
                .collect(Collectors.joining(", ", "not recorded: ", ""));
    }

    /** What several findings lean on is said once for all; what each leans on by itself, question by question. */
    private List<Reason> unconfirmed() {
        var shared = new ArrayList<String>();
        Set<Examination.Row> leaning = new LinkedHashSet<>();
        var own = new LinkedHashMap<Check, Set<Examination.Row>>();
        reservations.forEach((reservation, rows) -> {
            if (rows.size() > 1 || reservation.contains("not confirmed")) {
                shared.add(reservation);
                leaning.addAll(rows);
            } else {
                rows.forEach(row -> own.computeIfAbsent(checkOf(row), key -> new LinkedHashSet<>())
                        .add(row));
            }
        });
        var reasons = new ArrayList<Reason>();
        own.forEach((check, rows) -> reasons.add(new Reason(
                GateState.NOT_EXAMINED,
                said(check) + ", " + subjects(rows) + ": met, unconfirmed" + why(rows),
                ids(rows))));
        if (!shared.isEmpty()) {
            reasons.add(new Reason(
                    GateState.NOT_EXAMINED,
                    together(shared) + " (" + leaning.size() + (leaning.size() == 1 ? " finding)" : " findings)"),
                    ids(leaning)));
        }
        return reasons;
    }

    /** Limits as one list; whatever else is leant on after it. */
    private static String together(List<String> shared) {
        List<String> limits = shared.stream()
                .filter(reservation -> reservation.startsWith(UNCONFIRMED))
                .map(reservation -> reservation.substring(UNCONFIRMED.length()).replaceFirst(CLAUSE, ""))
                .distinct()
                .toList();
        String list = (limits.size() > 1 ? "limits not confirmed: " : UNCONFIRMED) + String.join("; ", limits);
        return Stream.concat(
                        limits.isEmpty() ? Stream.of() : Stream.of(list),
                        shared.stream().filter(reservation -> !reservation.startsWith(UNCONFIRMED)))
                .collect(Collectors.joining("; "));
    }

    private Check checkOf(Examination.Row row) {
        Check check = weak.get(row);
        if (check == null) {
            throw new IllegalStateException("a finding of no check");
        }
        return check;
    }

    /** One finding says why; of several it stands in their rows. */
    private String why(Set<Examination.Row> rows) {
        if (rows.size() > 1) {
            return "";
        }
        return rows.stream()
                .flatMap(row -> row.finding().reservations().stream())
                .filter(reservation ->
                        Stream.ofNullable(reservations.get(reservation)).allMatch(leaning -> leaning.size() == 1))
                .collect(Collectors.joining("; ", " (", ")"));
    }

    private static String said(Check check) {
        return check.id().replace('-', ' ');
    }

    private static String subjects(Iterable<Examination.Row> rows) {
        var subjects = new ArrayList<String>();
        rows.forEach(row -> subjects.add(row.finding().subject()));
        return String.join(subjects.stream().anyMatch(subject -> subject.contains(", ")) ? "; " : ", ", subjects);
    }

    private static List<String> ids(Iterable<Examination.Row> rows) {
        var ids = new ArrayList<String>();
        rows.forEach(row -> ids.add(row.id()));
        return ids;
    }
}
