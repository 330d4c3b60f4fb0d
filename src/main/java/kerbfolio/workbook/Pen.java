package kerbfolio.workbook;

import java.time.LocalDate;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes the cells of one sheet. Text goes in as text and never as a formula; a formula carries the value it had at issue. */
final class Pen {
    /** Stands in a cell where there is no figure. */
    static final String NOTHING = "\u2014";

    /** As whoever typed it would see it: a number somebody wrote has the digits he wrote. */
    static final String AS_TYPED = "General";

    private static final String DAY = "yyyy\\-mm\\-dd";
    private static final float LINE = 12;
    private static final double UNITS_PER_CHARACTER = 256;

    private final XSSFSheet sheet;
    private final Styles styles;

    Pen(XSSFSheet sheet, Styles styles) {
        this.sheet = sheet;
        this.styles = styles;
    }

    XSSFSheet sheet() {
        return sheet;
    }

    void text(int row, int column, String text, Look look) {
        CellText cellText = CellText.of(text);
        XSSFCell cell = cell(row, column);
        cell.setCellValue(cellText.stored());
        cell.setCellStyle(styles.of(look, look == Look.INPUT_TEXT ? "@" : "", cellText.isQuoted()));
    }

    void texts(int row, int column, Look look, String... texts) {
        for (int i = 0; i < texts.length; i++) {
            text(row, column + i, texts[i], look);
        }
    }

    /** Text over several columns, in a row high enough for it. */
    void across(int row, int first, int last, String text, Look look) {
        text(row, first, text, look);
        sheet.addMergedRegion(new CellRangeAddress(row, row, first, last));
        double characters = 0;
        for (int column = first; column <= last; column++) {
            characters += sheet.getColumnWidth(column) / UNITS_PER_CHARACTER;
        }
        row(row).setHeightInPoints(LINE * lines(text, characters));
    }

    void number(int row, int column, double number, Look look, String format) {
        XSSFCell cell = cell(row, column);
        cell.setCellValue(number);
        cell.setCellStyle(styles.of(look, format, false));
    }

    void day(int row, int column, LocalDate day) {
        XSSFCell cell = cell(row, column);
        cell.setCellValue(day);
        cell.setCellStyle(styles.of(Look.INPUT_TEXT, DAY, false));
    }

    /** An empty cell for a date. */
    void noDay(int row, int column) {
        cell(row, column).setCellStyle(styles.of(Look.INPUT_TEXT, DAY, false));
    }

    void blank(int row, int column, Look look) {
        cell(row, column).setCellStyle(styles.of(look, look == Look.INPUT ? AS_TYPED : "", false));
    }

    /** A formula with the number it had at issue. */
    void formula(int row, int column, String formula, double atIssue, Look look, String format) {
        XSSFCell cell = cell(row, column);
        cell.setCellFormula(formula);
        cell.setCellValue(atIssue);
        cell.setCellStyle(styles.of(look, format, false));
    }

    /** A formula with the word it had at issue. */
    void formula(int row, int column, String formula, String atIssue, Look look) {
        XSSFCell cell = cell(row, column);
        cell.setCellFormula(formula);
        cell.setCellValue(atIssue);
        cell.setCellStyle(styles.of(look, "", false));
    }

    /** Makes a row high enough for text in a column of its own. */
    void heighten(int row, int column, String text) {
        double characters = sheet.getColumnWidth(column) / UNITS_PER_CHARACTER;
        float wanted = LINE * lines(text, characters);
        if (row(row).getHeightInPoints() < wanted) {
            row(row).setHeightInPoints(wanted);
        }
    }

    static String address(int row, int column) {
        return new CellReference(row, column).formatAsString();
    }

    /** Lines a text takes, broken between words. */
    private static int lines(String text, double characters) {
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            int at = 0;
            lines++;
            for (String word : paragraph.split(" ", -1)) {
                if (at > 0 && at + 1 + word.length() > characters) {
                    lines++;
                    at = 0;
                }
                at += (at == 0 ? 0 : 1) + word.length();
                lines += (int) (Math.max(0, at - 1) / characters);
                at = at > characters ? (int) (at % characters) : at;
            }
        }
        return lines;
    }

    private XSSFCell cell(int row, int column) {
        XSSFRow line = row(row);
        XSSFCell cell = line.getCell(column);
        return cell == null ? line.createCell(column) : cell;
    }

    private XSSFRow row(int row) {
        XSSFRow line = sheet.getRow(row);
        return line == null ? sheet.createRow(row) : line;
    }
}
