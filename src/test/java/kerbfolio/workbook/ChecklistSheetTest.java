package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;

/** What is taken round the car: every mark and guard with its verdict, and room to write what was seen. */
class ChecklistSheetTest {
    private static final int FIRST = 3;
    private static final int VERDICT = 5;
    private static final int SEEN = 6;

    private static Opened opened(JobText job) {
        return Opened.of(Workbook.write(job.dossier()));
    }

    private static List<List<String>> rows(XSSFSheet sheet) {
        var rows = new ArrayList<List<String>>();
        for (Row row : sheet) {
            if (row.getRowNum() >= FIRST) {
                rows.add(IntStream.of(0, 1, 2, VERDICT)
                        .mapToObj(column -> row.getCell(column).getStringCellValue())
                        .toList());
            }
        }
        return rows;
    }

    /** Of the sound job's words: the symbol was seen on the inverter, nobody is named who saw the cable's cover. */
    @Test
    void everyMarkStandsWithItsVerdict() {
        List<List<String>> rows = rows(opened(TractionText.complete()).book().getSheet(ChecklistSheet.NAME));
        assertTrue(
                rows.contains(List.of("inverter", "engine bay", "warning symbol", "met, unconfirmed")),
                rows.toString());
        assertTrue(
                rows.contains(List.of("cable c-plus", "underfloor", "orange outer cover", "met, unconfirmed")),
                rows.toString());
        assertEquals(rows.size(), new HashSet<>(rows).size(), "each once");
    }

    @Test
    void aMarkThatIsMissingIsNotMet() {
        JobText black = TractionText.complete().alter("links", "c-plus", "colour: orange", "colour: black");
        List<List<String>> rows = rows(opened(black).book().getSheet(ChecklistSheet.NAME));
        assertTrue(
                rows.contains(List.of("cable c-plus", "underfloor", "orange outer cover", "not met")), rows.toString());
    }

    @Test
    void onlyTheRoomForWhatWasSeenMayBeWrittenOn() {
        Opened opened = opened(TractionText.complete());
        XSSFSheet sheet = opened.book().getSheet(ChecklistSheet.NAME);
        for (Row row : sheet) {
            if (row.getRowNum() >= FIRST) {
                for (int column = 0; column < 10; column++) {
                    assertEquals(
                            column < SEEN,
                            row.getCell(column).getCellStyle().getLocked(),
                            "row " + row.getRowNum() + ", column " + column);
                }
            }
        }
    }

    @Test
    void whatWasSeenIsChosenFromAListAndTheDayIsADay() {
        XSSFSheet sheet = opened(TractionText.complete()).book().getSheet(ChecklistSheet.NAME);
        DataValidation seen = the(sheet, ValidationType.LIST);
        assertEquals(
                List.of("seen", "not seen", "question"),
                Arrays.asList(seen.getValidationConstraint().getExplicitListValues()));
        for (DataValidation choice : List.of(seen, the(sheet, ValidationType.DATE))) {
            var range = choice.getRegions().getCellRangeAddress(0);
            assertEquals(FIRST, range.getFirstRow());
            assertEquals(sheet.getLastRowNum(), range.getLastRow());
            assertTrue(range.getFirstColumn() >= SEEN);
        }
    }

    private static DataValidation the(XSSFSheet sheet, int type) {
        return sheet.getDataValidations().stream()
                .filter(validation -> validation.getValidationConstraint().getValidationType() == type)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aJobWithoutHighVoltageHasNoChecklist() {
        assertNull(opened(JobText.onTwoAxles()).book().getSheet(ChecklistSheet.NAME));
    }
}
