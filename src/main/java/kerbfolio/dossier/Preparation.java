package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.Trade;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;

/**
 * What each gate asks, and where the answer stands.
 *
 * @param requirements each question by the gate that asks it, what is not met or missing first
 * @param questions the same, each question once
 * @param unexamined gate and the trades it asks for that this version does not examine
 */
public record Preparation(List<Requirement> requirements, List<Question> questions, List<String> unexamined) {

    /** A question with all gates that ask it, its answers by verdict. */
    public record Question(String gates, String question, String check, List<String> limits, List<Group> groups) {}

    /** The subjects of one verdict in one run. */
    public record Group(Verdict verdict, String subjects) {}

    /** A question a gate asks, with the answer for each subject. */
    public record Requirement(String gate, String question, String check, List<String> limits, List<Answer> answers) {
        private int rank() {
            return answers.stream()
                    .mapToInt(answer -> Preparation.rank(answer.verdict()))
                    .min()
                    .orElse(0);
        }
    }

    /** Where one subject of a question stands. */
    public record Answer(String finding, String subject, Verdict verdict) {}

    static Preparation of(List<Examination> examinations, Limits limits) {
        List<Requirement> requirements = Arrays.stream(Gate.values())
                .flatMap(gate -> limits.evidence(gate).stream()
                        .flatMap(required -> answering(examinations, required).stream())
                        .map(examination -> requirement(gate, examination)))
                .sorted(Comparator.comparingInt(Requirement::rank))
                .toList();
        return new Preparation(requirements, questions(requirements), unexamined(examinations, limits));
    }

    private static List<Question> questions(List<Requirement> requirements) {
        return requirements.stream()
                .collect(Collectors.groupingBy(Requirement::check, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(Preparation::question)
                .toList();
    }

    private static Question question(List<Requirement> asked) {
        Requirement first = asked.get(0);
        return new Question(
                asked.stream().map(Requirement::gate).distinct().collect(Collectors.joining(", ")),
                first.question(),
                first.check(),
                first.limits(),
                groups(first.answers()));
    }

    private static List<Group> groups(List<Answer> answers) {
        var subjects = new LinkedHashMap<Verdict, List<String>>();
        answers.stream()
                .sorted(Comparator.comparingInt(answer -> rank(answer.verdict())))
                .forEach(answer -> subjects.computeIfAbsent(answer.verdict(), key -> new ArrayList<>())
                        .add(answer.subject()));
        return subjects.entrySet().stream()
                .map(entry -> new Group(entry.getKey(), Listing.of(entry.getValue())))
                .toList();
    }

    private static List<String> unexamined(List<Examination> examinations, Limits limits) {
        var lines = new ArrayList<String>();
        for (Gate gate : Gate.values()) {
            String trades = limits.evidence(gate).stream()
                    .filter(required -> answering(examinations, required).isEmpty())
                    .map(Trade::words)
                    .collect(Collectors.joining(", "));
            if (!trades.isEmpty()) {
                lines.add(gate + ": " + trades);
            }
        }
        return List.copyOf(lines);
    }

    private static List<Examination> answering(List<Examination> examinations, String required) {
        return examinations.stream()
                .filter(e -> e.check().id().equals(required)
                        || e.check().trade().key().equals(required))
                .toList();
    }

    private static Requirement requirement(Gate gate, Examination examination) {
        return new Requirement(
                gate.toString(),
                examination.check().question(),
                examination.check().id(),
                examination.rows().stream()
                        .flatMap(row -> row.finding().limit().stream())
                        .map(limit -> limit.citation().toString())
                        .distinct()
                        .toList(),
                examination.rows().stream()
                        .map(row -> new Answer(row.id(), row.finding().subject(), row.verdict()))
                        .toList());
    }

    /** What is not met first, then what is missing, then what is done. */
    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case NOT_MET -> 0;
            case UNDECIDED -> 1;
            case NO_EVIDENCE -> 2;
            case MET_UNCONFIRMED -> 3;
            case MET, NO_LIMIT -> 4;
            case NOT_APPLICABLE -> 5;
        };
    }
}
