package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text of a job file never becomes a formula in somebody's spreadsheet. */
class HostileTextTest {
    private static final String LINK = "=HYPERLINK(\"http://example.invalid\",\"open\")";

    @ParameterizedTest
    @ValueSource(strings = {LINK, "+1+1", "@SUM(A1)", "-1", "=1+1", "=cmd|' /C calc'!A0"})
    void whateverItBeginsWithItStaysText(String text, @TempDir Path folder) {
        String quoted = "'" + text.replace("'", "''") + "'";
        Opened opened = Opened.of(IssuedJob.changed(
                        "first",
                        folder,
                        "customer: T. Ashdown",
                        "customer: " + quoted,
                        "name: battery,",
                        "name: " + quoted + ",",
                        "text: Boot carpet to be trimmed round the charger",
                        "text: " + quoted,
                        "area: boot",
                        "area: " + quoted,
                        "fate: on a stand at the customer's",
                        "fate: " + quoted)
                .workbook());
        List<XSSFCell> found = opened.cells().stream()
                .filter(cell -> cell.getCellType() == CellType.STRING)
                .filter(cell -> cell.getStringCellValue().equals(text))
                .toList();
        // Customer on the summary, text and area on the punch list, name and fate in the ledger, name on the checklist.
        assertEquals(
                Set.of("Summary", "Punch list", "Ledger", "Checklist"),
                found.stream().map(cell -> cell.getSheet().getSheetName()).collect(Collectors.toSet()));
        for (XSSFCell cell : found) {
            assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.getReference());
        }
        for (XSSFCell cell : opened.formulas()) {
            assertFalse(cell.getCellFormula().contains("HYPERLINK"), cell.getReference());
            assertFalse(cell.getCellFormula().contains("cmd"), cell.getReference());
        }
        assertTrue(opened.book().getSheet("Summary").getHyperlinkList().isEmpty());
    }

    @Test
    void aTabOrReturnBeforeTheSignDoesNotHelp() {
        assertTrue(CellText.of("\t=1+1").isQuoted());
        assertTrue(CellText.of("\r=1+1").isQuoted());
        assertFalse(CellText.of("front axle").isQuoted());
    }

    @Test
    void whatTheFileFormatCannotHoldIsShownAsReplaced() {
        // XML 1.0, 2.2: of the characters below space only tab, line feed and carriage return are allowed.
        assertEquals("a\uFFFDb\nc", CellText.of("a\u0000b\nc").stored());
        assertEquals("\uFFFD", CellText.of("\uD800").stored());
        assertEquals("\uD83D\uDE97", CellText.of("\uD83D\uDE97").stored());
    }

    @Test
    void anEscapeWrittenAsTextStaysText(@TempDir Path folder) {
        // ISO/IEC 29500-1, 22.4.2.4: _x003D_ in a string stands for the character with that code, an equals sign.
        String written = "_x003D_1+1";
        Opened opened = Opened.of(IssuedJob.changed("first", folder, "customer: T. Ashdown", "customer: " + written)
                .workbook());
        int row = opened.row("Summary", "", 0, "customer");
        assertEquals(written, opened.cell("Summary", row, 1).getStringCellValue());
    }

    @Test
    void textTooLongForACellIsCutAndSaysSo() {
        // 32 767 characters is what a cell holds: Microsoft, Excel specifications and limits.
        String stored = CellText.of("x".repeat(40_000)).stored();
        assertEquals(32_767, stored.length());
        assertTrue(stored.endsWith("[cut]"));
        assertEquals(32_767, CellText.of("x".repeat(32_767)).stored().length());
        assertFalse(CellText.of("x".repeat(32_767)).stored().endsWith("[cut]"));
    }
}
