package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Declared;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Known;
import kerbfolio.formula.Piece;
import kerbfolio.formula.Working;
import kerbfolio.quantity.UnitSystem;

/**
 * The part that shows how: every examination with its formula, its rows, and the full substitution of the row that is
 * worst off and of every row not met.
 *
 * @param shared workings several questions lean on, printed once and cited by number
 * @param pages one per examination
 * @param sources every document cited, in order of first use
 */
public record WorkingsPart(List<Step> shared, List<Page> pages, List<String> sources) {

    /** One examination. */
    public record Page(
            String id,
            String trade,
            String question,
            String gate,
            Optional<Piece> formula,
            List<Symbol> symbols,
            List<Piece> conditions,
            List<String> citations,
            String limit,
            List<Line> lines,
            List<Step> steps,
            boolean isJudged) {}

    /** A symbol's meaning and unit. */
    public record Symbol(Piece name, String meaning, String unit) {}

    /** One row. */
    public record Line(
            String id,
            String subject,
            Shown value,
            String limit,
            Verdict verdict,
            String why,
            List<Compared> compared) {}

    /** What a set printed for comparison would say. */
    public record Compared(String set, String limit, Verdict verdict, String citation) {}

    /** A working in full: of a row, or of a figure the row leans on; numbered where several questions cite it. */
    public record Step(
            String number,
            String name,
            Piece formula,
            Piece substituted,
            Shown result,
            String doubt,
            List<String> inputs,
            boolean isRow) {}

    static WorkingsPart of(List<Examination> examinations, UnitSystem system) {
        var steps = new Steps(examinations, system);
        List<Page> pages = examinations.stream()
                .map(examination -> page(examination, steps, system))
                .toList();
        return new WorkingsPart(steps.shared(), pages, Cited.by(examinations));
    }

    private static Page page(Examination examination, Steps steps, UnitSystem system) {
        Optional<Formula> formula = examination.rows().stream()
                .flatMap(row -> row.finding().working().stream())
                .map(Working::formula)
                .findFirst();
        boolean judged = examination.rows().stream()
                .anyMatch(row -> row.finding().limit().isPresent());
        return new Page(
                examination.check().id(),
                examination.check().trade().toString(),
                examination.check().question(),
                examination.check().gate().map(Object::toString).orElse(""),
                formula.map(Formula::printed),
                formula.map(WorkingsPart::symbols).orElse(List.of()),
                formula.map(Formula::printedNeeds).orElse(List.of()),
                formula.map(f -> f.citations().stream().map(Object::toString).toList())
                        .orElse(List.of()),
                examination.rows().stream()
                        .flatMap(row -> row.finding().limit().stream())
                        .map(Limit::origin)
                        .distinct()
                        .reduce((a, b) -> a + "; " + b)
                        .orElse(""),
                examination.rows().stream().map(row -> line(row, system)).toList(),
                steps.of(examination),
                judged);
    }

    private static List<Symbol> symbols(Formula formula) {
        var symbols = new ArrayList<Symbol>();
        symbols.add(symbol(formula.result()));
        formula.symbols().forEach(declared -> symbols.add(symbol(declared)));
        formula.constants()
                .forEach(constant -> symbols.add(new Symbol(
                        Piece.symbol(constant.symbol()), constant.value() + ", " + constant.citation(), "")));
        return List.copyOf(symbols);
    }

    private static Symbol symbol(Declared declared) {
        return new Symbol(
                Piece.symbol(declared.symbol()),
                declared.meaning(),
                declared.unit().text());
    }

    private static Line line(Examination.Row row, UnitSystem system) {
        var finding = row.finding();
        return new Line(
                row.id(),
                finding.subject(),
                Shown.of(finding, system),
                finding.limit().map(limit -> words(limit, system)).orElse("\u2014"),
                row.verdict(),
                why(row),
                finding.others().stream()
                        .map(limit -> new Compared(
                                limit.set(),
                                words(limit, system),
                                limit.judge(finding.result()),
                                limit.citation().toString()))
                        .toList());
    }

    private static String words(Limit limit, UnitSystem system) {
        return limit.bound() + " " + Shown.of(limit, system);
    }

    private static String why(Examination.Row row) {
        if (row.verdict() == Verdict.NOT_APPLICABLE && row.notApplicable().isPresent()) {
            var entry = row.notApplicable().get();
            return entry.by() + ": " + entry.reason();
        }
        return switch (row.verdict()) {
            case NO_EVIDENCE -> row.finding().lack();
            case UNDECIDED -> "the limit lies within the expanded uncertainty";
            case MET_UNCONFIRMED ->
                Stream.concat(found(row.finding()), weaknesses(row.finding()).stream())
                        .collect(Collectors.joining("; "));
            default -> found(row.finding()).collect(Collectors.joining());
        };
    }

    /** What was found on the way, of a figure no formula gives. */
    private static Stream<String> found(Finding finding) {
        return finding.result() instanceof Known known ? Stream.of(known.origin()) : Stream.empty();
    }

    /** What the figure leans on that nobody confirmed; the limit itself stands below the table, with who vouches for it. */
    private static List<String> weaknesses(Finding finding) {
        var words = new ArrayList<>(finding.result().reservations());
        if (finding.limit().filter(limit -> !limit.standing().isConfirmed()).isPresent()) {
            words.add("limit unconfirmed");
        }
        return words;
    }
}
