package kerbfolio.workbook;

import java.util.List;
import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.Handover;
import kerbfolio.job.Waiver;
import kerbfolio.release.GateReport;
import kerbfolio.release.NextReading;
import kerbfolio.release.Reason;

/** The first sheet: which job, the four gates with every reason, what to record next, and the cautions. */
final class SummarySheet {
    static final String NAME = "Summary";

    private static final int[] WIDTHS = {18, 24, 74, 48};
    private static final int LAST = WIDTHS.length - 1;

    private static final String READING =
            "How to read this workbook: a figure on a trade's sheet is worked out there from "
                    + "the sheet Readings; change a number on a light ground in Readings and figure, margin and live verdict "
                    + "follow. The uncertainty U stays as it was at issue. The paper rounds U up and a judged figure toward "
                    + "its failing side; here both stand to the nearest digit. Gates, findings and the verdicts at issue are those "
                    + "of this revision: they follow only when the shop takes the change into the job file and issues again.";

    private static final int MOST_FINDINGS = 3;

    private final Dossier dossier;
    private final Pen pen;
    private int row;

    private SummarySheet(Dossier dossier, Pen pen) {
        this.dossier = dossier;
        this.pen = pen;
    }

    static void write(Dossier dossier, Binding binding) {
        new SummarySheet(dossier, binding.sheet(NAME, 0, WIDTHS)).write();
    }

    private void write() {
        var head = dossier.head();
        pen.text(0, 0, "Job " + head.number() + ", revision " + head.revision(), Look.TITLE);
        row = 2;
        head.lines().forEach(line -> {
            pen.text(row, 0, line.label(), Look.TEXT);
            pen.across(row, 1, LAST, line.text(), Look.TEXT);
            row++;
        });
        pen.text(row, 0, "requirements", Look.TEXT);
        pen.across(row, 1, LAST, requirements(), Look.TEXT);
        row++;
        gates();
        next();
        named("Let pass by name", dossier.handover().waivers());
        named("Said not to apply", dossier.handover().notApplicable());
        paragraphs("Recorded, not examined by this version", dossier.unexamined());
        paragraphs("Cautions", dossier.cautions());
        paragraphs("This workbook", List.of(READING, head.program() + ", fingerprint " + head.fingerprint()));
    }

    private String requirements() {
        List<String> compared = dossier.inspection().comparedSets();
        return dossier.inspection().homeSet()
                + (compared.isEmpty() ? "" : "; for comparison: " + String.join("; ", compared));
    }

    private void gates() {
        heading("Gates", "gate", "state", "reason", "finding or item");
        int first = row;
        for (GateReport report : dossier.handover().gates()) {
            pen.text(row, 0, report.gate().toString(), Look.WORD);
            pen.text(row, 1, report.state().toString(), Look.WORD);
            rest(report.gate().meaning(), "");
            for (Reason reason : report.reasons()) {
                line("", "", reason.state() + ": " + reason.text(), few(reason.findings()));
            }
            for (Waiver waiver : report.waivers()) {
                line("", "", waived(waiver), waiver.finding());
            }
        }
        Highlights.states(pen.sheet(), first, row - 1, 1);
    }

    private static String few(List<String> findings) {
        String some = String.join(", ", findings.subList(0, Math.min(MOST_FINDINGS, findings.size())));
        return findings.size() <= MOST_FINDINGS ? some : some + ", and " + (findings.size() - MOST_FINDINGS) + " more";
    }

    /** With the figure that was let pass. */
    private String waived(Waiver waiver) {
        String figure = dossier.handover().figures().get(waiver.finding());
        return "by waiver of " + waiver.by() + (figure == null ? "" : ", " + figure) + ": " + waiver.reason();
    }

    private void line(String first, String second, String text, String id) {
        pen.text(row, 0, first, Look.TEXT);
        pen.text(row, 1, second, Look.TEXT);
        rest(text, id);
    }

    private void rest(String text, String id) {
        pen.text(row, 2, text, Look.TEXT);
        pen.text(row, 3, id, Look.SMALL);
        row++;
    }

    private void next() {
        if (dossier.handover().next().isEmpty()) {
            return;
        }
        heading("Next readings worth taking", "minutes, about", "takes", "what", "where it goes in the job file");
        for (NextReading reading : dossier.handover().next()) {
            int findings = reading.findings().size();
            line(
                    String.valueOf(reading.minutes()),
                    reading.instrument(),
                    reading.what() + " (" + findings + (findings == 1 ? " finding lacks it)" : " findings lack it)"),
                    String.join(", ", reading.paths()));
        }
    }

    private void named(String title, List<Handover.NamedLine> lines) {
        if (lines.isEmpty()) {
            return;
        }
        heading(title, "date", "by", "reason", "finding or check");
        for (Handover.NamedLine line : lines) {
            line(line.date(), line.by(), line.reason(), line.what());
        }
    }

    private void paragraphs(String title, List<String> paragraphs) {
        if (paragraphs.isEmpty()) {
            return;
        }
        row++;
        pen.text(row, 0, title, Look.HEADING);
        row++;
        for (String paragraph : paragraphs) {
            pen.across(row, 0, LAST, paragraph, Look.TEXT);
            row++;
        }
    }

    private void heading(String title, String... heads) {
        row++;
        pen.text(row, 0, title, Look.HEADING);
        row++;
        pen.texts(row, 0, Look.HEAD, heads);
        row++;
    }
}
