package kerbfolio.workbook;

import java.time.LocalDate;
import java.util.List;
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
    private static final float LINE = 11.5f;
    private static final float HEADING = 20;
    private static final float PADDING = 2.5f;

    /** A row is never higher than a page; what is longer is read in the cell. */
    private static final int MOST_LINES = 30;

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
        place(row, column, text, look);
        if (look == Look.HEADING) {
            heighten(row(row), HEADING);
        } else if (look.isWrapped()) {
            heighten(row(row), height(text, width(column), look));
        }
    }

    private void place(int row, int column, String text, Look look) {
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
        place(row, first, text, look);
        sheet.addMergedRegion(new CellRangeAddress(row, row, first, last));
        double width = 0;
        for (int column = first; column <= last; column++) {
            width += width(column);
        }
        row(row).setHeightInPoints(height(text, width, look));
    }

    /** Empty cells for somebody to write in, up to a column. */
    void room(int row, int first, int last, Integer... days) {
        for (int column = first; column <= last; column++) {
            if (List.of(days).contains(column)) {
                noDay(row, column);
            } else {
                text(row, column, "", Look.INPUT_TEXT);
            }
        }
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

    static String address(int row, int column) {
        return new CellReference(row, column).formatAsString();
    }

    private double width(int column) {
        return sheet.getColumnWidth(column) / UNITS_PER_CHARACTER;
    }

    private static float height(String text, double width, Look look) {
        double fits = Math.max(1, (width - 1) * look.density());
        return PADDING + LINE * Math.min(MOST_LINES, lines(text, fits));
    }

    /** High enough for its text as written; a spreadsheet fits it anew when the text is edited. */
    private static void heighten(XSSFRow row, float wanted) {
        if (row.getHeightInPoints() < wanted) {
            row.setHeightInPoints(wanted);
            row.getCTRow().unsetCustomHeight();
        }
    }

    /** Lines a text takes, broken between words. */
    private static int lines(String text, double fits) {
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            double at = 0;
            lines++;
            for (String word : paragraph.split(" ", -1)) {
                double length = word.length();
                if (at > 0 && at + 1 + length > fits) {
                    lines++;
                    at = 0;
                }
                at += (at == 0 ? 0 : 1) + length;
                for (; at > fits; at -= fits) {
                    lines++;
                }
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
