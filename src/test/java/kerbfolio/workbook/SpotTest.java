package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import kerbfolio.quantity.Unit;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpotTest {
    // Factors: NIST SP 811 (2008), Appendix B.8: lb 0.45359237 kg, in 0.0254 m; temperatures B.8 and 4.2.1.1.
    @ParameterizedTest
    @CsvSource({"20,°C,°F,68", "-40,°F,°C,-40", "32,°F,K,273.15", "100,lb,kg,45.359237", "1,in,mm,25.4", "50,%,,0.5"})
    void aCellInOneUnitIsReadInAnother(double number, String unit, String wanted, double expected) throws IOException {
        assertEquals(
                expected, worked(number, new Spot("Low voltage", 0, 0, Unit.of(unit)).in(wanted(wanted), "x")), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"20,°C,293.15", "68,°F,293.15", "100,lb,45.359237", "5,,5"})
    void aNumberAsWrittenIsBroughtToSi(double number, String unit, double expected) throws IOException {
        assertEquals(expected, worked(number, new Spot("Low voltage", 0, 0, wanted(unit)).toSi()), 1e-9);
    }

    @Test
    void aCellOfAnotherSheetIsCalledWithItsName() {
        var spot = new Spot("Low voltage", 11, 1, Unit.of("V"));
        assertEquals("B12", spot.from("Low voltage"));
        assertEquals("'Low voltage'!B12", spot.from("Weight"));
        assertEquals("B12:B14", spot.down(3, "Low voltage"));
        assertEquals("'Low voltage'!B12:B14", spot.down(3, "Weight"));
    }

    private static Unit wanted(String unit) {
        return Unit.of(unit == null ? "" : unit);
    }

    private static double worked(double number, String formula) throws IOException {
        try (var book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("Low voltage");
            sheet.createRow(0).createCell(0).setCellValue(number);
            XSSFCell cell = sheet.createRow(1).createCell(0);
            cell.setCellFormula(formula);
            return book.getCreationHelper()
                    .createFormulaEvaluator()
                    .evaluate(cell)
                    .getNumberValue();
        }
    }
}
