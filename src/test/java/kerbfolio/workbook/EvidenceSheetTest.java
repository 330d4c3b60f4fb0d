package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.dossier.Dossier;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;

/** The sheets to be filled in at the car and sent back. */
class EvidenceSheetTest {
    private static final Dossier LACKING = JobText.onTwoAxles()
            .without("vehicle.tyres.rear")
            .with("vehicle.ratings.front-axle", "800 kg")
            .dossier();
    private static final Opened OPENED = Opened.of(Workbook.write(LACKING));

    private static List<String> column(XSSFSheet sheet, int column) {
        var texts = new ArrayList<String>();
        for (Row row : sheet) {
            if (row.getRowNum() > 2) {
                texts.add(row.getCell(column).getStringCellValue());
            }
        }
        return texts;
    }

    @Test
    void everyAnswerAGateAsksForStandsWithItsVerdictAndRoomBesideIt() {
        XSSFSheet sheet = OPENED.book().getSheet(EvidenceSheet.NAME);
        List<String> findings = new ArrayList<>();
        List<String> verdicts = new ArrayList<>();
        LACKING.inspection()
                .preparation()
                .requirements()
                .forEach(asked -> asked.answers().forEach(answer -> {
                    findings.add(answer.finding());
                    verdicts.add(answer.verdict().toString());
                }));
        assertTrue(findings.size() > 10, findings.toString());
        assertEquals(findings, column(sheet, 4));
        assertEquals(verdicts, column(sheet, 3));
        assertFalse(OPENED.cell(EvidenceSheet.NAME, 3, 6).getCellStyle().getLocked());
        assertTrue(OPENED.cell(EvidenceSheet.NAME, 3, 3).getCellStyle().getLocked());
        assertEquals(
                List.of("seen", "not seen", "question"),
                Arrays.asList(sheet.getDataValidations()
                        .get(0)
                        .getValidationConstraint()
                        .getExplicitListValues()));
    }

    @Test
    void everyMissingReadingStandsBesideItsPlaceInTheJobFile() {
        List<String> paths = LACKING.handover().next().stream()
                .flatMap(reading -> reading.paths().stream())
                .toList();
        assertTrue(paths.stream().anyMatch(path -> path.startsWith("vehicle.tyres.rear")), paths.toString());
        assertEquals(paths, column(OPENED.book().getSheet(ToRecordSheet.NAME), 0));
        assertFalse(OPENED.cell(ToRecordSheet.NAME, 3, 5).getCellStyle().getLocked());
    }

    @Test
    void whereNothingIsMissingThereIsNothingToRecord() {
        Dossier complete = TractionText.complete().dossier();
        assertEquals(List.of(), complete.handover().next());
        assertNull(Opened.of(Workbook.write(complete)).book().getSheet(ToRecordSheet.NAME));
    }

    /** Told by ground and weight of the letters, so that it is seen on a grey print. */
    @Test
    void whatIsNotMetIsSetOff() {
        var rules = OPENED.book().getSheet(EvidenceSheet.NAME).getSheetConditionalFormatting();
        List<String> words = new ArrayList<>();
        for (int i = 0; i < rules.getNumConditionalFormattings(); i++) {
            words.add(rules.getConditionalFormattingAt(i).getRule(0).getFormula1());
        }
        assertEquals(List.of("\"not met\"", "\"no evidence\"", "\"undecided\""), words);
    }
}
