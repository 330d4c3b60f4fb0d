package kerbfolio.workbook;

import kerbfolio.quantity.Notation;
import kerbfolio.quantity.Unit;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;

/**
 * Where a figure stands in the workbook. Cells are called by address only, because R, C or T1 are no legal names there.
 *
 * @param sheet name of the sheet
 * @param row counted from 0
 * @param column counted from 0
 * @param unit the unit the number in the cell is in
 */
record Spot(String sheet, int row, int column, Unit unit) {

    /** The address as a cell of a sheet writes it. */
    String from(String writing) {
        return writing.equals(sheet)
                ? Pen.address(row, column)
                : new CellReference(sheet, row, column, false, false).formatAsString();
    }

    /** The cells from here down, as a cell of a sheet writes them. */
    String down(int rows, String writing) {
        var area = new AreaReference(
                new CellReference(row, column),
                new CellReference(row + rows - 1, column),
                SpreadsheetVersion.EXCEL2007);
        String cells = area.formatAsString();
        String first = from(writing);
        return first.substring(0, first.lastIndexOf('!') + 1) + cells;
    }

    /** The number brought into another unit; where there is none, the mark for nothing. */
    String in(Unit wanted, String writing) {
        String cell = from(writing);
        if (unit.factor() == wanted.factor() && unit.offset() == wanted.offset()) {
            return cell;
        }
        return numberOr(
                cell, divided(plus(times(cell, unit.factor()), unit.offset() - wanted.offset()), wanted.factor()));
    }

    /** The number in SI, as the cell beside it works it out. */
    String toSi() {
        String cell = Pen.address(row, column);
        String scaled = times(cell, unit.factor()) + (unit.offset() == 0 ? "" : "+" + literal(unit.offset()));
        return numberOr(cell, scaled);
    }

    /** An expression that reads a cell, or the mark for nothing if the cell holds no number. */
    private static String numberOr(String cell, String expression) {
        return "IF(ISNUMBER(" + cell + ")," + expression + ",\"" + Pen.NOTHING + "\")";
    }

    private static String literal(double value) {
        String digits = Notation.plain(value);
        return value < 0 ? "(" + digits + ")" : digits;
    }

    private static String times(String expression, double factor) {
        return factor == 1 ? expression : expression + "*" + literal(factor);
    }

    private static String plus(String expression, double offset) {
        return offset == 0 ? expression : "(" + expression + "+" + literal(offset) + ")";
    }

    private static String divided(String expression, double factor) {
        return factor == 1 ? expression : expression + "/" + literal(factor);
    }
}
