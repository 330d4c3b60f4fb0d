package kerbfolio.workbook;

import java.util.ArrayList;
import java.util.Optional;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.Shown;
import kerbfolio.quantity.UnitSystem;

/** Every finding as it stood at issue, as the paper prints it. Nothing here is live. */
final class FindingsSheet {
    static final String NAME = "Findings";

    private static final int HEAD = 1;
    private static final int[] WIDTHS = {26, 9, 32, 22, 13, 19, 13, 34, 11, 42};

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
        for (Examination examination : dossier.examinations()) {
            for (Examination.Row found : examination.rows()) {
                line(pen, row, examination.check(), found, dossier.units());
                row++;
            }
        }
    }

    private static void line(Pen pen, int row, Check check, Examination.Row found, UnitSystem units) {
        Finding finding = found.finding();
        Optional<Limit> limit = finding.limit();
        pen.text(row, 0, found.id(), Look.SMALL);
        pen.text(row, 1, check.trade().toString(), Look.TEXT);
        pen.text(row, 2, check.question(), Look.TEXT);
        pen.text(row, 3, finding.subject(), Look.TEXT);
        pen.text(row, 4, found.verdict().toString(), word(found.verdict()));
        pen.text(row, 5, words(Shown.of(finding, units)), Look.TEXT);
        pen.text(row, 6, limit.map(l -> asked(l, units)).orElse(Pen.NOTHING), Look.TEXT);
        pen.text(row, 7, limit.map(Limit::origin).orElse(""), Look.SMALL);
        pen.text(row, 8, check.gate().map(Object::toString).orElse(Pen.NOTHING), Look.TEXT);
        pen.text(row, 9, remarks(found, units), Look.SMALL);
    }

    private static Look word(Verdict verdict) {
        return verdict == Verdict.NO_LIMIT ? Look.TEXT : Look.WORD;
    }

    private static String words(Shown shown) {
        return shown.small().isEmpty() ? shown.large() : shown.large() + " (" + shown.small() + ")";
    }

    private static String asked(Limit limit, UnitSystem units) {
        return limit.bound() + " " + Shown.of(limit, units);
    }

    private static String why(Examination.Row found) {
        if (found.verdict() == Verdict.NOT_APPLICABLE && found.notApplicable().isPresent()) {
            var entry = found.notApplicable().get();
            return entry.by() + ": " + entry.reason();
        }
        if (found.verdict() == Verdict.NO_EVIDENCE) {
            return found.finding().result().origin();
        }
        return found.verdict() == Verdict.UNDECIDED
                ? "the limit lies within the expanded uncertainty"
                : String.join("; ", found.finding().reservations());
    }

    /** Why the verdict is what it is, and what sets printed for comparison would say. */
    private static String remarks(Examination.Row found, UnitSystem units) {
        var remarks = new ArrayList<String>();
        remarks.add(why(found));
        Finding finding = found.finding();
        for (Limit other : finding.others()) {
            remarks.add("for comparison, " + other.set() + ": " + asked(other, units) + ", "
                    + other.judge(finding.result()));
        }
        remarks.removeIf(String::isEmpty);
        return String.join("; ", remarks);
    }
}
