package kerbfolio.workbook;

import java.util.List;
import kerbfolio.dossier.Dossier;
import kerbfolio.release.NextReading;

/** What is still to be recorded, each figure beside its place in the job file, in the order that answers most. */
final class ToRecordSheet {
    static final String NAME = "To record";

    private static final int HEAD = 2;
    private static final int VALUE = 5;
    private static final int ON = 7;
    private static final int[] WIDTHS = {44, 48, 26, 10, 40, 20, 18, 13, 18, 30};

    private ToRecordSheet() {}

    /** No sheet where nothing is missing. */
    static void write(Dossier dossier, Binding binding) {
        List<NextReading> next = dossier.handover().next();
        if (next.isEmpty()) {
            return;
        }
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(0, 0, "To record: what is asked for and missing, most useful first", Look.TITLE);
        pen.text(
                1,
                0,
                "Write figures with their unit, as in the job file: 592 lb \u00b1 1 lb. A reading needs its instrument and day.",
                Look.SMALL_LINE);
        pen.texts(
                HEAD,
                0,
                Look.HEAD,
                "in the job file",
                "errand",
                "takes",
                "minutes, about",
                "answers",
                "figure with unit",
                "instrument",
                "on",
                "by",
                "note");
        int row = HEAD + 1;
        for (NextReading reading : next) {
            for (String path : reading.paths()) {
                line(pen, row, path, reading);
                row++;
            }
        }
        new Choices(pen.sheet(), HEAD + 1, row - 1).days(ON);
    }

    private static void line(Pen pen, int row, String path, NextReading reading) {
        pen.text(row, 0, path, Look.SMALL);
        pen.text(row, 1, reading.what(), Look.TEXT);
        pen.text(row, 2, reading.instrument(), Look.TEXT);
        pen.text(row, 3, String.valueOf(reading.minutes()), Look.TEXT);
        pen.text(row, 4, String.join(", ", reading.findings()), Look.SMALL);
        pen.room(row, VALUE, WIDTHS.length - 1, ON);
    }
}
