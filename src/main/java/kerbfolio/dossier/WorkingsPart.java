package kerbfolio.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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
 * worst off and of the rows not met.
 *
 * @param shared workings several questions lean on, printed once and cited by number
 * @param pages one per examination
 * @param sections the pages with something to show, by subject
 * @param lacking the questions of which nothing was recorded, by subject
 * @param sources every document cited, in order of first use
 */
public record WorkingsPart(
        List<Step> shared, List<Page> pages, List<Section> sections, List<Section> lacking, List<String> sources) {

    /** Questions of one subject. */
    public record Section(String title, List<Page> pages) {}

    /**
     * One examination.
     *
     * @param lines one per subject
     * @param table the same as paper shows them
     * @param lack what was not recorded, where that is all there is to say; else empty
     * @param unworked how many more rows not met stand in the table only
     */
    public record Page(
            String id,
            String trade,
            String sheet,
            String question,
            String gate,
            Optional<Piece> formula,
            List<Symbol> symbols,
            List<Piece> conditions,
            List<String> citations,
            String limit,
            List<Line> lines,
            ResultTable table,
            String lack,
            List<Step> steps,
            int unworked,
            boolean isJudged) {}

    /** A symbol's meaning and unit. */
    public record Symbol(Piece name, String meaning, String unit) {}

    /**
     * One row.
     *
     * @param said what was found on the way, or what is lacking
     * @param doubts why a figure that is met does not clear
     */
    public record Line(
            String id,
            String subject,
            Shown value,
            String limit,
            Verdict verdict,
            String said,
            List<String> doubts,
            List<Compared> compared) {
        static final String NOT_RECORDED = "not recorded: ";
        static final String LIMIT_UNCONFIRMED = "limit unconfirmed";

        /** Whether all there is to say is what was not recorded. */
        boolean isUnrecorded() {
            return verdict == Verdict.NO_EVIDENCE && said.startsWith(NOT_RECORDED);
        }

        /** Everything there is to say of the verdict. */
        public String why() {
            return Stream.concat(Stream.of(said), doubts.stream())
                    .filter(words -> !words.isEmpty())
                    .collect(Collectors.joining("; "));
        }
    }

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
        return new WorkingsPart(
                steps.shared(),
                pages,
                sections(pages.stream().filter(page -> page.lack().isEmpty())),
                sections(pages.stream().filter(page -> !page.lack().isEmpty())),
                Cited.by(examinations));
    }

    private static List<Section> sections(Stream<Page> pages) {
        return pages
                .collect(Collectors.groupingBy(Page::sheet, LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(entry -> new Section(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static Page page(Examination examination, Steps steps, UnitSystem system) {
        Optional<Formula> formula = examination.rows().stream()
                .flatMap(row -> row.finding().working().stream())
                .map(Working::formula)
                .findFirst();
        boolean judged = examination.rows().stream()
                .anyMatch(row -> row.finding().limit().isPresent());
        List<Line> lines =
                examination.rows().stream().map(row -> line(row, system)).toList();
        boolean isSilent = !lines.isEmpty() && lines.stream().allMatch(Line::isUnrecorded);
        return new Page(
                examination.check().id(),
                examination.check().trade().toString(),
                examination.check().sheet(),
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
                lines,
                ResultTable.of(lines),
                isSilent ? ResultTable.lacking(lines).substring(Line.NOT_RECORDED.length()) : "",
                steps.of(examination),
                Steps.unworked(examination),
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
                said(row),
                row.verdict() == Verdict.MET_UNCONFIRMED ? weaknesses(finding) : List.of(),
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

    private static String said(Examination.Row row) {
        if (row.verdict() == Verdict.NOT_APPLICABLE && row.notApplicable().isPresent()) {
            var entry = row.notApplicable().get();
            return entry.by() + ": " + entry.reason();
        }
        return switch (row.verdict()) {
            case NO_EVIDENCE -> row.finding().lack();
            case UNDECIDED -> "the limit lies within the expanded uncertainty";
            default -> found(row.finding());
        };
    }

    /** What was found on the way, of a figure no formula gives. */
    private static String found(Finding finding) {
        return finding.result() instanceof Known known ? known.origin() : "";
    }

    /** What the figure leans on that nobody confirmed; the limit itself stands below the table, with who vouches for it. */
    private static List<String> weaknesses(Finding finding) {
        var words = new ArrayList<>(finding.result().reservations());
        if (finding.limit().filter(limit -> !limit.standing().isConfirmed()).isPresent()) {
            words.add(Line.LIMIT_UNCONFIRMED);
        }
        return words;
    }
}
