package kerbfolio.workbook;

import java.util.List;
import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.Preparation;

/** What each gate asks and where the answer stands, with room for whoever inspects to say what was seen. */
final class EvidenceSheet {
    static final String NAME = "Evidence";
    static final List<String> SEEN = List.of("seen", "not seen", "question");

    private static final int HEAD = 2;
    private static final int VERDICT = 3;
    private static final int SEEN_OR_NOT = 6;
    private static final int ON = 8;
    private static final int[] WIDTHS = {12, 44, 24, 20, 30, 44, 13, 18, 13, 36};

    private EvidenceSheet() {}

    static void write(Dossier dossier, Binding binding) {
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(0, 0, "Evidence: what is asked, and where the answer stands", Look.TITLE);
        pen.text(
                1,
                0,
                "Verdicts are those at issue. Write on the light ground what was seen at the car.",
                Look.SMALL_LINE);
        pen.texts(
                HEAD,
                0,
                Look.HEAD,
                "gate",
                "question",
                "subject",
                "verdict",
                "finding",
                "who asks it",
                "seen",
                "by",
                "on",
                "note");
        int row = HEAD + 1;
        for (Preparation.Requirement asked : dossier.inspection().preparation().requirements()) {
            for (Preparation.Answer answer : asked.answers()) {
                line(pen, row, asked, answer);
                row++;
            }
        }
        if (row > HEAD + 1) {
            Highlights.verdicts(pen.sheet(), HEAD + 1, row - 1, VERDICT);
            var choices = new Choices(pen.sheet(), HEAD + 1, row - 1);
            choices.words(SEEN_OR_NOT, SEEN.toArray());
            choices.days(ON);
        }
    }

    private static void line(Pen pen, int row, Preparation.Requirement asked, Preparation.Answer answer) {
        pen.text(row, 0, asked.gate(), Look.TEXT);
        pen.text(row, 1, asked.question(), Look.TEXT);
        pen.text(row, 2, answer.subject(), Look.TEXT);
        pen.text(row, VERDICT, answer.verdict().toString(), Look.WORD);
        pen.text(row, 4, answer.finding(), Look.SMALL);
        pen.text(row, 5, String.join("; ", asked.limits()), Look.SMALL);
        pen.room(row, SEEN_OR_NOT, WIDTHS.length - 1, ON);
    }
}
