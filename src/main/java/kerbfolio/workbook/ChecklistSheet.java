package kerbfolio.workbook;

import java.util.List;
import kerbfolio.dossier.Checklist;
import kerbfolio.dossier.Dossier;

/** The isolation and labelling checklist, with room for whoever walks round the car with it. */
final class ChecklistSheet {
    static final String NAME = "Checklist";

    private static final int HEAD = 2;
    private static final int VERDICT = 5;
    private static final int SEEN_OR_NOT = 6;
    private static final int ON = 8;
    private static final int[] WIDTHS = {24, 12, 26, 40, 40, 20, 13, 18, 13, 30};

    private ChecklistSheet() {}

    /** No sheet where no high voltage is recorded. */
    static void write(Dossier dossier, Binding binding) {
        List<Checklist.Subject> subjects =
                dossier.inspection().highVoltage().checklist().subjects();
        if (subjects.isEmpty()) {
            return;
        }
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(0, 0, "Isolation and labelling checklist: part by part, cable by cable", Look.TITLE);
        pen.text(
                1,
                0,
                "Verdicts are those at issue. Write on the light ground what was seen at the car.",
                Look.SMALL_LINE);
        pen.texts(
                HEAD,
                0,
                Look.HEAD,
                "part or cable",
                "where",
                "asked",
                "by which clause",
                "what the record shows",
                "verdict",
                "seen",
                "by",
                "on",
                "note");
        int row = HEAD + 1;
        for (Checklist.Subject subject : subjects) {
            for (Checklist.Item item : subject.items()) {
                pen.texts(row, 0, Look.TEXT, subject.name(), subject.place(), asked(item));
                pen.texts(row, 3, Look.SMALL, item.clause(), item.shown());
                pen.text(row, VERDICT, item.verdict().toString(), Look.WORD);
                pen.room(row, SEEN_OR_NOT, WIDTHS.length - 1, ON);
                row++;
            }
        }
        Highlights.verdicts(pen.sheet(), HEAD + 1, row - 1, VERDICT);
        var choices = new Choices(pen.sheet(), HEAD + 1, row - 1);
        choices.words(SEEN_OR_NOT, EvidenceSheet.SEEN.toArray());
        choices.days(ON);
    }

    private static String asked(Checklist.Item item) {
        return item.of().isEmpty() ? item.what() : item.what() + ", " + item.of();
    }
}
