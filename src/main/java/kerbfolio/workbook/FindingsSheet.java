package kerbfolio.workbook;

import java.util.ArrayList;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.Shown;
import kerbfolio.dossier.WorkingsPart;

/** Every finding as it stood at issue, as the paper prints it. Nothing here is live. */
final class FindingsSheet {
    static final String NAME = "Findings";

    private static final int HEAD = 1;
    private static final int VERDICT = 4;
    private static final int[] WIDTHS = {26, 9, 32, 22, 15, 19, 13, 34, 11, 42};

    private FindingsSheet() {}

    static void write(Dossier dossier, Binding binding) {
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(0, 0, "Findings at issue, as printed", Look.TITLE);
        pen.texts(
                HEAD,
                0,
                Look.HEAD,
                "finding",
                "trade",
                "question",
                "subject",
                "verdict",
                "figure \u00b1 U (k = 2)",
                "limit",
                "source of the limit",
                "gate",
                "remarks");
        int row = HEAD + 1;
        for (WorkingsPart.Page page : dossier.workings().pages()) {
            for (WorkingsPart.Line line : page.lines()) {
                line(pen, row, page, line);
                row++;
            }
        }
        Highlights.verdicts(pen.sheet(), HEAD + 1, row, VERDICT);
    }

    private static void line(Pen pen, int row, WorkingsPart.Page page, WorkingsPart.Line line) {
        pen.text(row, 0, line.id(), Look.SMALL);
        pen.text(row, 1, page.trade(), Look.TEXT);
        pen.text(row, 2, page.question(), Look.TEXT);
        pen.text(row, 3, line.subject(), Look.TEXT);
        pen.text(row, VERDICT, line.verdict().toString(), line.verdict() == Verdict.NO_LIMIT ? Look.TEXT : Look.WORD);
        pen.text(row, 5, words(line.value()), Look.TEXT);
        pen.text(row, 6, line.limit(), Look.TEXT);
        pen.text(row, 7, page.limit(), Look.SMALL);
        pen.text(row, 8, page.gate().isEmpty() ? Pen.NOTHING : page.gate(), Look.TEXT);
        pen.text(row, 9, remarks(line), Look.SMALL);
    }

    private static String words(Shown shown) {
        return shown.small().isEmpty() ? shown.large() : shown.large() + " (" + shown.small() + ")";
    }

    /** Why the verdict is what it is, and what sets printed for comparison would say. */
    private static String remarks(WorkingsPart.Line line) {
        var remarks = new ArrayList<String>();
        if (!line.why().isEmpty()) {
            remarks.add(line.why());
        }
        for (WorkingsPart.Compared other : line.compared()) {
            remarks.add("for comparison, " + other.set() + ": " + other.limit() + ", " + other.verdict());
        }
        return String.join("; ", remarks);
    }
}
