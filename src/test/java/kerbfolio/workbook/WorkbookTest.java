package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import kerbfolio.check.Check;
import kerbfolio.formula.Basis;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkbookTest {
    private static final int PATH = 1;
    private static final int BASIS = 7;

    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup"})
    void aSpreadsheetEngineWorksOutWhatJavaDid(String sample) {
        Opened opened = Opened.of(IssuedJob.sample(sample).workbook());
        assertTrue(opened.formulas().size() > 50, "only " + opened.formulas().size() + " formulas");
        opened.assertWorksOut();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup"})
    void everyFindingStandsOnItsTradesSheetWithItsVerdict(String sample) {
        IssuedJob job = IssuedJob.sample(sample);
        Opened opened = Opened.of(job.workbook());
        for (var examination : job.dossier().examinations()) {
            for (var row : examination.rows()) {
                String sheet = sheet(examination.check());
                int at = opened.row(
                        sheet, examination.check().question(), 0, row.finding().subject());
                assertEquals(
                        row.verdict().toString(),
                        opened.cell(sheet, at, TradeSheet.VERDICT).getStringCellValue(),
                        row.id());
            }
        }
    }

    private static String sheet(Check check) {
        String words = check.sheet();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup"})
    void everyPathBesideANumberIsAPlaceInTheJobFile(String sample) {
        IssuedJob job = IssuedJob.sample(sample);
        Opened opened = Opened.of(job.workbook());
        var paths = new ArrayList<String>();
        for (Row row : opened.book().getSheet(ReadingsSheet.NAME)) {
            Cell number = row.getCell(ReadingsSheet.NUMBER);
            if (number != null && !number.getCellStyle().getLocked()) {
                String path = row.getCell(PATH).getStringCellValue();
                paths.add(path);
                if (!row.getCell(BASIS).getStringCellValue().equals(Basis.ABSENT.word())) {
                    assertTrue(job.file().places().written(path).isPresent(), path);
                }
            }
        }
        assertTrue(paths.size() > 10, "only " + paths);
        assertEquals(paths.size(), new HashSet<>(paths).size(), "each once: " + paths);
    }

    @Test
    void limitsAndSolvedFiguresCannotBeChanged() {
        Opened opened = Opened.of(IssuedJob.sample("estate").workbook());
        var locked = new ArrayList<String>();
        for (Row row : opened.book().getSheet(ReadingsSheet.NAME)) {
            Cell basis = row.getCell(BASIS);
            if (basis != null && Stream.of("required", "solved").anyMatch(basis.getStringCellValue()::equals)) {
                assertTrue(row.getCell(ReadingsSheet.NUMBER).getCellStyle().getLocked(), "row " + row.getRowNum());
                locked.add(basis.getStringCellValue());
            }
        }
        assertTrue(locked.contains("required") && locked.contains("solved"), locked.toString());
    }

    @Test
    void whatIsMissingIsListedWithItsReasonAndAnEmptyNumber(@TempDir Path folder) {
        // Written in the sample: the seats; taken away here. The estate's tier asks for them.
        Opened opened = Opened.of(
                IssuedJob.changed("estate", folder, "  seats: \"5\"\n", "").workbook());
        int row = opened.row(ReadingsSheet.NAME, "", PATH, "vehicle.seats");
        XSSFCell number = opened.cell(ReadingsSheet.NAME, row, ReadingsSheet.NUMBER);
        assertEquals(CellType.BLANK, number.getCellType());
        assertFalse(number.getCellStyle().getLocked());
        assertEquals(
                "not recorded", opened.cell(ReadingsSheet.NAME, row, BASIS + 1).getStringCellValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup"})
    void theSameDossierGivesTheSameBytes(String sample) {
        assertArrayEquals(
                IssuedJob.sample(sample).workbook(), IssuedJob.sample(sample).workbook());
    }

    @Test
    void everySheetIsReadyForThePrinter() {
        for (String sample : List.of("first", "estate")) {
            Opened opened = Opened.of(IssuedJob.sample(sample).workbook());
            // Paper sizes as numbered in ISO/IEC 29500-1, 18.3.1.63: 1 Letter, 9 A4. The estate asks for Letter.
            int paper = sample.equals("estate") ? 1 : 9;
            for (Sheet sheet : opened.book()) {
                String name = sheet.getSheetName();
                // Pictures stand upright on one page, each with its caption.
                boolean isPictures = name.equals("Pictures");
                assertEquals(!isPictures, sheet.getPrintSetup().getLandscape(), name);
                assertEquals(paper, sheet.getPrintSetup().getPaperSize(), name);
                assertTrue(sheet.getFitToPage(), name);
                assertEquals(1, sheet.getPrintSetup().getFitWidth(), name);
                assertEquals(isPictures ? 1 : 0, sheet.getPrintSetup().getFitHeight(), name);
                assertEquals(0, sheet.getRepeatingRows().getFirstRow(), name);
                assertTrue(sheet.getPaneInformation().isFreezePane(), name);
                assertTrue(sheet.getProtect(), name);
                assertTrue(sheet.getFooter().getRight().contains("&P of &N"), name);
                assertTrue(sheet.getFooter().getLeft().matches("Job .*, 0000-0000-0000-0000"), name);
            }
        }
    }

    @Test
    void noFigureIsCalledByNameAndNoColumnIsHidden() {
        Opened opened = Opened.of(IssuedJob.sample("estate").workbook());
        opened.book()
                .getAllNames()
                .forEach(name -> assertTrue(name.getNameName().startsWith("_xlnm."), name.getNameName()));
        for (Sheet sheet : opened.book()) {
            for (int column = 0; column < 30; column++) {
                assertFalse(sheet.isColumnHidden(column), sheet.getSheetName() + ", column " + column);
            }
        }
    }

    @Test
    void noFormatShowsMoreThanSixDecimals() {
        for (XSSFCell cell : Opened.of(IssuedJob.sample("estate").workbook()).cells()) {
            assertFalse(cell.getCellStyle().getDataFormatString().contains(".0000000"), cell.getReference());
        }
    }
}
