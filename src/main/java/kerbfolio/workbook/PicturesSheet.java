package kerbfolio.workbook;

import java.util.List;
import kerbfolio.dossier.Dossier;
import kerbfolio.figure.Figure;
import kerbfolio.figure.Figures;
import kerbfolio.figure.Picture;
import org.apache.poi.ss.usermodel.ClientAnchor.AnchorType;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The figures as pictures, one under the other, each with its caption. They show the job as issued and are not live. */
final class PicturesSheet {
    static final String NAME = "Pictures";

    private static final int HEAD = 0;
    /** Wider than a figure in any spreadsheet's measure of a character. */
    private static final int WIDTH = 120;
    /** No row may be higher than this [pt]. */
    private static final float HIGHEST = 409;

    private static final float AROUND = 12;
    /** A line of a caption [pt]. */
    private static final float LINE = 13;
    /** Characters sure to go on a line: fewer than do with any spreadsheet's letters. */
    private static final int ON_A_LINE = 110;

    private PicturesSheet() {}

    /** Adds the sheet, where the job has anything to draw. */
    static void write(Dossier dossier, Binding binding) {
        List<Figure> figures = Figures.of(dossier);
        if (figures.isEmpty()) {
            return;
        }
        Pen pen = binding.sheet(NAME, HEAD, WIDTH);
        pen.text(HEAD, 0, "Pictures, as at issue", Look.TITLE);
        pen.sheet().getPrintSetup().setLandscape(false);
        pen.sheet().getPrintSetup().setFitHeight((short) 1);
        XSSFDrawing drawing = pen.sheet().createDrawingPatriarch();
        var picture = new Picture();
        int row = HEAD + 2;
        for (Figure figure : figures) {
            String caption = figure.caption();
            pen.text(row, 0, caption, Look.TEXT);
            pen.sheet().getRow(row).setHeightInPoints(Math.min(HIGHEST, LINE * (1 + caption.length() / ON_A_LINE)));
            place(pen.sheet(), drawing, figure, picture.of(figure), row + 1);
            row += 3;
        }
    }

    /** A picture lies within one cell, so that its proportions hang on no column's width. */
    private static void place(XSSFSheet sheet, XSSFDrawing drawing, Figure figure, byte[] png, int row) {
        XSSFWorkbook book = sheet.getWorkbook();
        double scale = Math.min(1, (HIGHEST - AROUND) / figure.height());
        int width = Units.toEMU(scale * figure.width());
        int height = Units.toEMU(scale * figure.height());
        sheet.createRow(row).setHeightInPoints((float) (scale * figure.height()) + AROUND);
        int edge = Units.toEMU(AROUND / 2);
        var anchor = new XSSFClientAnchor(edge, edge, edge + width, edge + height, 0, row, 0, row);
        anchor.setAnchorType(AnchorType.MOVE_DONT_RESIZE);
        drawing.createPicture(anchor, book.addPicture(png, XSSFWorkbook.PICTURE_TYPE_PNG))
                .getCTPicture()
                .getNvPicPr()
                .getCNvPr()
                .setDescr(figure.alternative());
    }
}
