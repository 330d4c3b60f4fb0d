package kerbfolio.workbook;

import kerbfolio.dossier.Head;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes the sheets, all alike: protected but for the cells somebody may fill, and ready for the printer. */
final class Binding {
    private static final int UNITS_PER_CHARACTER = 256;
    private static final double MARGIN_INCHES = 0.5;
    private static final double FOOT_INCHES = 0.7;
    private static final float ROW_POINTS = 14;
    private static final int LONGEST_NUMBER = 60;

    private final XSSFWorkbook book;
    private final Styles styles;
    private final Head head;

    Binding(XSSFWorkbook book, Head head) {
        this.book = book;
        this.styles = new Styles(book);
        this.head = head;
    }

    /**
     * Adds a sheet.
     *
     * @param name its name, fixed
     * @param headRow row of the column heads, counted from 0: it stays in sight, and is repeated on every page
     * @param widths of its columns, in characters
     */
    Pen sheet(String name, int headRow, int... widths) {
        XSSFSheet sheet = book.createSheet(name);
        for (int column = 0; column < widths.length; column++) {
            sheet.setColumnWidth(column, widths[column] * UNITS_PER_CHARACTER);
        }
        sheet.createFreezePane(0, headRow + 1);
        sheet.setRepeatingRows(new CellRangeAddress(0, headRow, -1, -1));
        sheet.setDisplayGridlines(false);
        sheet.setDefaultRowHeightInPoints(ROW_POINTS);
        protect(sheet);
        print(sheet);
        return new Pen(sheet, styles);
    }

    /** Against slips, not against people: no password, and columns and rows may be drawn wider. */
    private static void protect(XSSFSheet sheet) {
        sheet.enableLocking();
        sheet.lockFormatColumns(false);
        sheet.lockFormatRows(false);
    }

    private void print(XSSFSheet sheet) {
        XSSFPrintSetup setup = sheet.getPrintSetup();
        setup.setPaperSize(head.paper().equals("letter") ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
        setup.setLandscape(true);
        sheet.setFitToPage(true);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, MARGIN_INCHES);
        sheet.setMargin(PageMargin.RIGHT, MARGIN_INCHES);
        sheet.setMargin(PageMargin.TOP, MARGIN_INCHES);
        sheet.setMargin(PageMargin.BOTTOM, FOOT_INCHES);
        String job = "Job " + mild(head.number()) + ", revision " + mild(head.revision());
        sheet.getCTWorksheet()
                .addNewHeaderFooter()
                .setOddFooter("&L" + job + ", " + head.fingerprint() + "&C&A&RPage &P of &N");
    }

    /** An ampersand would begin a command there. */
    private static String mild(String text) {
        String stored = CellText.of(text).stored();
        String cut = stored.length() <= LONGEST_NUMBER ? stored : stored.substring(0, LONGEST_NUMBER);
        return cut.replace("&", "&&");
    }
}
