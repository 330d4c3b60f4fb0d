package kerbfolio.workbook;

import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.HighVoltage;

/** Every cable and every fuse of the traction circuit as recorded, and which guards which. */
final class ScheduleSheet {
    static final String NAME = "Schedule";

    private static final int HEAD = 1;
    private static final int[] WIDTHS = {22, 36, 14, 12, 20, 20, 12, 44, 14, 16};

    private ScheduleSheet() {}

    /** No sheet where no high voltage is recorded. */
    static void write(Dossier dossier, Binding binding) {
        HighVoltage highVoltage = dossier.inspection().highVoltage();
        if (highVoltage.cables().isEmpty() && highVoltage.fuses().isEmpty()) {
            return;
        }
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(
                0,
                0,
                "Cables and fuses as recorded; whether their ratings hold is worked on the sheets before",
                Look.TITLE);
        pen.texts(
                HEAD,
                0,
                Look.HEAD,
                "cable",
                "from, to",
                "size",
                "length",
                "rated",
                "ampacity",
                "hottest",
                "fuses that guard it",
                "colour",
                "where");
        int row = HEAD + 1;
        for (HighVoltage.CableLine line : highVoltage.cables()) {
            pen.texts(
                    row,
                    0,
                    Look.TEXT,
                    line.id(),
                    line.way(),
                    line.size(),
                    line.length(),
                    line.rated(),
                    line.ampacity(),
                    line.ambient(),
                    line.guards(),
                    line.colour(),
                    line.place());
            row++;
        }
        row++;
        pen.texts(
                row,
                0,
                Look.HEAD,
                "fuse",
                "name",
                "rated",
                "where",
                "voltage",
                "breaks",
                "lets through",
                "cables it guards");
        row++;
        for (HighVoltage.FuseLine line : highVoltage.fuses()) {
            pen.texts(
                    row,
                    0,
                    Look.TEXT,
                    line.id(),
                    line.name(),
                    line.current(),
                    line.where(),
                    line.voltage(),
                    line.breaks(),
                    line.letThrough(),
                    line.guards());
            row++;
        }
    }
}
