package kerbfolio.workbook;

import java.time.LocalDate;
import java.util.List;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Closing;
import kerbfolio.job.Hold;
import kerbfolio.job.Owner;
import kerbfolio.job.PunchItem;
import org.apache.poi.ss.util.CellRangeAddress;
import org.jspecify.annotations.Nullable;

/** The punch list, to be filled in and sent back: each item beside its place in the job file, and room for new ones. */
final class PunchListSheet {
    static final String NAME = "Punch list";

    private static final int HEAD = 2;
    private static final int HOLDS = 4;
    private static final int OWNER = 5;
    private static final int RAISED = 6;
    private static final int DUE = 8;
    private static final int CLOSED = 10;
    private static final int ROOM = 12;
    private static final int[] WIDTHS = {15, 6, 40, 14, 12, 12, 13, 16, 13, 16, 13, 24, 16, 24};

    private PunchListSheet() {}

    static void write(Dossier dossier, Binding binding) {
        List<PunchItem> items = dossier.car().job().punchList();
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(0, 0, "Punch list", Look.TITLE);
        pen.text(
                1,
                0,
                "Write on the light ground and send the workbook back; bold italics are overdue today. An item that holds a "
                        + "gate is closed by the shop, with a name and a reading or photo.",
                Look.SMALL_LINE);
        pen.texts(
                HEAD,
                0,
                Look.HEAD,
                "in the job file",
                "id",
                "text",
                "area",
                "holds",
                "owner",
                "raised",
                "raised by",
                "due",
                "closed by",
                "closed on",
                "reading",
                "photo",
                "note");
        int row = HEAD + 1;
        for (PunchItem item : items) {
            line(pen, row, item);
            row++;
        }
        for (int i = 0; i < ROOM; i++) {
            room(pen, row);
            row++;
        }
        var choices = new Choices(pen.sheet(), HEAD + 1, row - 1);
        choices.words(HOLDS, (Object[]) Hold.values());
        choices.words(OWNER, (Object[]) Owner.values());
        choices.days(RAISED, DUE, CLOSED);
        Highlights.cells(pen.sheet(), new CellRangeAddress(HEAD + 1, row - 1, 0, WIDTHS.length - 1), overdue(HEAD + 2));
    }

    /** Whether the item of a row, counted from 1, is due and not closed on the day somebody looks. */
    private static String overdue(int row) {
        return "AND($I" + row + "<>\"\",$I" + row + "<TODAY(),$J" + row + "=\"\")";
    }

    private static void line(Pen pen, int row, PunchItem item) {
        pen.text(row, 0, "punch-list[" + item.id() + "]", Look.SMALL);
        pen.text(row, 1, item.id(), Look.TEXT);
        text(pen, row, 2, item.text());
        text(pen, row, 3, item.area());
        text(pen, row, HOLDS, item.holds());
        text(pen, row, OWNER, item.owner());
        day(pen, row, RAISED, item.raised());
        text(pen, row, 7, item.by());
        day(pen, row, DUE, item.due());
        Closing closed = item.closed();
        text(pen, row, 9, closed == null ? null : closed.by());
        day(pen, row, CLOSED, closed == null ? null : closed.date());
        text(pen, row, 11, closed == null ? null : closed.reading());
        text(pen, row, 12, closed == null ? null : closed.photo());
        text(pen, row, 13, item.note());
    }

    /** A row for a new item; it has no place in the job file yet. */
    private static void room(Pen pen, int row) {
        pen.text(row, 0, "new", Look.SMALL);
        pen.room(row, 1, WIDTHS.length - 1, RAISED, DUE, CLOSED);
    }

    private static void text(Pen pen, int row, int column, @Nullable Object text) {
        pen.text(row, column, text == null ? "" : text.toString(), Look.INPUT_TEXT);
    }

    private static void day(Pen pen, int row, int column, @Nullable LocalDate day) {
        if (day == null) {
            pen.noDay(row, column);
        } else {
            pen.day(row, column, day);
        }
    }
}
