package kerbfolio.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A written workbook, opened again as a reader would. */
final class Opened {
    private final XSSFWorkbook book;

    private Opened(XSSFWorkbook book) {
        this.book = book;
    }

    static Opened of(byte[] bytes) {
        try (var in = new ByteArrayInputStream(bytes)) {
            return new Opened(new XSSFWorkbook(in));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    XSSFWorkbook book() {
        return book;
    }

    /** Every cell there is. */
    List<XSSFCell> cells() {
        var cells = new ArrayList<XSSFCell>();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    cells.add((XSSFCell) cell);
                }
            }
        }
        return cells;
    }

    List<XSSFCell> formulas() {
        return cells().stream()
                .filter(cell -> cell.getCellType() == CellType.FORMULA)
                .toList();
    }

    XSSFCell cell(String sheet, int row, int column) {
        XSSFCell cell = book.getSheet(sheet).getRow(row).getCell(column);
        return cell == null ? fail(sheet + " has no cell in row " + (row + 1) + ", column " + (column + 1)) : cell;
    }

    /** The row of a sheet whose cell in a column reads so, below a row whose first cell reads so. */
    int row(String sheet, String below, int column, String text) {
        boolean passed = below.isEmpty();
        for (Row row : book.getSheet(sheet)) {
            if (passed && text.equals(words(row.getCell(column)))) {
                return row.getRowNum();
            }
            passed |= below.equals(words(row.getCell(0)));
        }
        return fail(sheet + " has no row " + text + " below " + below);
    }

    private static String words(Cell cell) {
        return cell != null && cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
    }

    /** The workbook without any value at issue, so that whoever opens it must work every formula out. */
    byte[] withoutValues() {
        for (XSSFCell cell : formulas()) {
            var plain = cell.getCTCell();
            if (plain.isSetV()) {
                plain.unsetV();
            }
            if (plain.isSetT()) {
                plain.unsetT();
            }
        }
        var out = new ByteArrayOutputStream();
        try {
            book.write(out);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    /** POI's engine finds for every formula the value it has at issue: numbers to 1e-9, words exactly. */
    void assertWorksOut() {
        var engine = book.getCreationHelper().createFormulaEvaluator();
        for (XSSFCell cell : formulas()) {
            CellValue found = engine.evaluate(cell);
            String where = where(cell);
            assertEquals(cell.getCachedFormulaResultType(), found.getCellType(), where);
            if (found.getCellType() == CellType.NUMERIC) {
                assertClose(cell.getNumericCellValue(), found.getNumberValue(), largest(cell), where);
            } else {
                assertEquals(cell.getStringCellValue(), found.getStringValue(), where);
            }
        }
    }

    private static String where(XSSFCell cell) {
        return cell.getSheet().getSheetName() + "!" + cell.getReference() + " =" + cell.getCellFormula();
    }

    /** All formulas of this workbook have the same values in another: to 1e-9, words exactly. */
    void assertAgrees(Opened other) {
        for (XSSFCell cell : formulas()) {
            String sheet = cell.getSheet().getSheetName();
            XSSFCell found = other.cell(sheet, cell.getRowIndex(), cell.getColumnIndex());
            String where = where(cell);
            if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                assertClose(cell.getNumericCellValue(), found.getNumericCellValue(), largest(cell), where);
            } else {
                assertEquals(cell.getStringCellValue(), found.getStringCellValue(), where);
            }
        }
    }

    /** Equal to 1e-9; what cancels to dust, to 1e-12 of the largest figure it came from. */
    static void assertClose(double expected, double found, double largest, String where) {
        double tolerance = Math.max(1e-9 * Math.abs(expected), 1e-12 * largest);
        assertEquals(expected, found, tolerance, where);
    }

    /** The largest figure of a cell's row. */
    static double largest(Cell cell) {
        double largest = 0;
        for (Cell beside : cell.getRow()) {
            CellType type = beside.getCellType() == CellType.FORMULA
                    ? beside.getCachedFormulaResultType()
                    : beside.getCellType();
            if (type == CellType.NUMERIC) {
                largest = Math.max(largest, Math.abs(beside.getNumericCellValue()));
            }
        }
        return largest;
    }
}
