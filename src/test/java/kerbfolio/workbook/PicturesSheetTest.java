package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import kerbfolio.JobText;
import kerbfolio.figure.Figure;
import kerbfolio.figure.Figures;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;

class PicturesSheetTest {
    private static List<XSSFShape> pictures(XSSFSheet sheet) {
        return sheet.getDrawingPatriarch().getShapes();
    }

    @Test
    void everyFigureStandsUnderItsCaptionInItsProportions() throws IOException {
        IssuedJob job = IssuedJob.sample("estate");
        XSSFSheet sheet = Opened.of(job.workbook()).book().getSheet("Pictures");
        List<Figure> figures = Figures.of(job.dossier());
        assertEquals(figures.size(), pictures(sheet).size());
        for (int i = 0; i < figures.size(); i++) {
            Figure figure = figures.get(i);
            var picture = (XSSFPicture) pictures(sheet).get(i);
            var anchor = (XSSFClientAnchor) picture.getAnchor();
            assertEquals(
                    figure.caption(),
                    sheet.getRow(anchor.getRow1() - 1).getCell(0).getStringCellValue());
            double proportion = (double) (anchor.getDx2() - anchor.getDx1()) / (anchor.getDy2() - anchor.getDy1());
            assertEquals(figure.width() / figure.height(), proportion, 1e-3);
            var image = ImageIO.read(
                    new ByteArrayInputStream(picture.getPictureData().getData()));
            assertEquals(proportion, (double) image.getWidth() / image.getHeight(), 0.01);
            assertEquals(
                    figure.alternative(),
                    picture.getCTPicture().getNvPicPr().getCNvPr().getDescr());
        }
    }

    @Test
    void aPictureLiesWithinItsCell() {
        XSSFSheet sheet =
                Opened.of(IssuedJob.sample("estate").workbook()).book().getSheet("Pictures");
        for (XSSFShape shape : pictures(sheet)) {
            var anchor = (XSSFClientAnchor) shape.getAnchor();
            assertEquals(anchor.getRow1(), anchor.getRow2());
            assertEquals(anchor.getCol1(), anchor.getCol2());
            double points = anchor.getDy2() / (double) org.apache.poi.util.Units.EMU_PER_POINT;
            assertTrue(points <= sheet.getRow(anchor.getRow1()).getHeightInPoints());
        }
    }

    @Test
    void aJobWithNothingToDrawHasNoSuchSheet() {
        assertNull(Opened.of(Workbook.write(JobText.blank().dossier())).book().getSheet("Pictures"));
    }

    /** 120 figures of a column hold no more than 160 letters of running text; a line of 10 pt type takes 12 pt. */
    @Test
    void aLongCaptionHasARowHighEnough() {
        JobText job = JobText.onTwoAxles()
                .add("parts", "{ id: a, name: \"" + "long word ".repeat(30) + "\", mass: 9 kg, mass-from: maker }")
                .add("removed", "{ id: b, name: \"" + "long word ".repeat(30) + "\", mass: 9 kg, mass-from: maker }");
        XSSFSheet sheet = Opened.of(Workbook.write(job.dossier())).book().getSheet("Pictures");
        sheet.rowIterator().forEachRemaining(row -> {
            if (row.getCell(0) != null) {
                int lines = 1 + row.getCell(0).getStringCellValue().length() / 160;
                assertTrue(row.getHeightInPoints() >= 12 * lines, row.getCell(0).getStringCellValue());
            }
        });
    }
}
