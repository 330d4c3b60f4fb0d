package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
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
    @ValueSource(strings = {"first", "estate", "pickup", "kit-car"})
    void aSpreadsheetEngineWorksOutWhatJavaDid(String sample) {
        Opened opened = Opened.of(IssuedJob.sample(sample).workbook());
        assertTrue(opened.formulas().size() > 50, "only " + opened.formulas().size() + " formulas");
        opened.assertWorksOut();
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup", "kit-car"})
    void everyFindingStandsOnItsTradesSheetWithItsVerdict(String sample) {
        IssuedJob job = IssuedJob.sample(sample);
        Opened opened = Opened.of(job.workbook());
        for (var examination : job.dossier().examinations()) {
            for (var row : examination.rows()) {
                String sheet = examination.check().sheet();
                int at = opened.row(
                        sheet, examination.check().question(), 0, row.finding().subject());
                assertEquals(
                        row.verdict().toString(),
                        opened.cell(sheet, at, TradeSheet.VERDICT).getStringCellValue(),
                        row.id());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "estate", "pickup", "kit-car"})
    void everyPathBesideANumberIsAPlaceInTheJobFile(String sample) {
        IssuedJob job = IssuedJob.sample(sample);
        Map<String, String> basis = editable(Opened.of(job.workbook()));
        assertTrue(basis.size() > 10, "only " + basis);
        basis.forEach((path, word) -> assertTrue(
                word.equals(Basis.ABSENT.word())
                        || job.file().places().written(path).isPresent(),
                path));
    }

    /** The basis of every number that may be changed, by its path; each path stands there once. */
    private static Map<String, String> editable(Opened opened) {
        var basis = new LinkedHashMap<String, String>();
        for (Row row : opened.book().getSheet(ReadingsSheet.NAME)) {
            Cell number = row.getCell(ReadingsSheet.NUMBER);
            if (number != null && !number.getCellStyle().getLocked()) {
                String path = row.getCell(PATH).getStringCellValue();
                assertNull(basis.put(path, row.getCell(BASIS).getStringCellValue()), "twice: " + path);
            }
        }
        return basis;
    }

    /** A section, an entry, a word or a day cannot be filled in by one number. */
    @Test
    void ofWhatIsMissingOnlyNumbersMayBeFilledIn() {
        for (JobText job : List.of(
                JobText.blank(),
                TractionText.sound().without("pack.precharge.resistor").without("pack.cell.max-voltage"),
                TractionText.sound().without("labels").without("links"),
                TractionText.sound().without("pack").without("readings"),
                TractionText.sound().without("parts").without("pack"))) {
            Set<String> paths =
                    editable(Opened.of(Workbook.write(job.dossier()))).keySet();
            for (String section :
                    List.of("parts", "links", "labels", "pack.precharge.resistor", "pack.boxes", "pack.monitors")) {
                assertFalse(paths.contains(section), section);
            }
            assertTrue(paths.stream().allMatch(path -> path.contains(".")), () -> "a whole section: " + paths);
        }
        assertTrue(JobPath.isNumber("pack.cell.max-voltage"));
        assertTrue(JobPath.isNumber("parts[main-fuse].fuse.dc-voltage"));
        assertTrue(JobPath.isNumber("weighings.as-delivered.corners.left-front"));
        assertFalse(JobPath.isNumber("parts[main-fuse]"));
        assertFalse(JobPath.isNumber("weighings.as-delivered"));
        assertFalse(JobPath.isNumber("pack.monitors.at"));
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
    @ValueSource(strings = {"first", "estate", "pickup", "kit-car"})
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
