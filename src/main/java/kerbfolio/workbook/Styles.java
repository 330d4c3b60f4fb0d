package kerbfolio.workbook;

import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The looks as cell styles, each made once. One accent colour, thin rules, a light ground where somebody may write. */
final class Styles {
    private static final String FACE = "Arial";
    private static final short TITLE_SIZE = 14;
    private static final short HEADING_SIZE = 11;
    private static final short TEXT_SIZE = 9;
    private static final short SMALL_SIZE = 8;

    private static final XSSFColor ACCENT = colour(0x1F, 0x4E, 0x5F);
    private static final XSSFColor GREY = colour(0x55, 0x5B, 0x60);
    private static final XSSFColor RULE = colour(0xC9, 0xCE, 0xD1);
    private static final XSSFColor PAPER = colour(0xEE, 0xF2, 0xF4);
    private static final XSSFColor INPUT = colour(0xFB, 0xF6, 0xE3);

    private record Key(Look look, String format, boolean quoted) {}

    private record Face(short size, boolean bold, XSSFColor colour) {}

    private final XSSFWorkbook book;
    private final Map<Key, XSSFCellStyle> styles = new HashMap<>();
    private final Map<Face, XSSFFont> fonts = new HashMap<>();

    Styles(XSSFWorkbook book) {
        this.book = book;
        XSSFFont standard = book.getFontAt(0);
        standard.setFontName(FACE);
        standard.setFontHeightInPoints(TEXT_SIZE);
    }

    /**
     * The style of a look.
     *
     * @param format number format; empty for text
     * @param quoted marks text that begins like a formula, so that editing the cell leaves it text
     */
    XSSFCellStyle of(Look look, String format, boolean quoted) {
        return styles.computeIfAbsent(new Key(look, format, quoted), this::make);
    }

    private XSSFCellStyle make(Key key) {
        Look look = key.look();
        XSSFCellStyle style = book.createCellStyle();
        style.setFont(fonts.computeIfAbsent(face(look), this::font));
        style.setWrapText(look.isWrapped());
        style.setVerticalAlignment(look.sitsLow() ? VerticalAlignment.BOTTOM : VerticalAlignment.TOP);
        style.setAlignment(look.isRight() ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        style.setIndention((short) (look.isIndented() ? 1 : 0));
        style.setLocked(!look.isInput());
        style.setQuotePrefixed(key.quoted());
        if (!key.format().isEmpty()) {
            style.setDataFormat(book.createDataFormat().getFormat(key.format()));
        }
        rules(style, look);
        ground(style, look);
        return style;
    }

    private static void rules(XSSFCellStyle style, Look look) {
        if (look.isRuled()) {
            style.setBorderBottom(BorderStyle.THIN);
            style.setBottomBorderColor(RULE);
        }
        if (look.isHead()) {
            style.setBorderBottom(BorderStyle.MEDIUM);
            style.setBottomBorderColor(ACCENT);
        }
    }

    private static void ground(XSSFCellStyle style, Look look) {
        if (look.isInput() || look.isHead()) {
            style.setFillForegroundColor(look.isInput() ? INPUT : PAPER);
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        }
    }

    private static Face face(Look look) {
        short size = look == Look.TITLE
                ? TITLE_SIZE
                : look == Look.HEADING ? HEADING_SIZE : look.isSmall() ? SMALL_SIZE : TEXT_SIZE;
        boolean accented = look == Look.TITLE || look == Look.HEADING || look.isHead();
        XSSFColor colour = accented ? ACCENT : look.isSmall() ? GREY : colour(0, 0, 0);
        return new Face(size, look.isBold(), colour);
    }

    private XSSFFont font(Face face) {
        XSSFFont font = book.createFont();
        font.setFontName(FACE);
        font.setFontHeightInPoints(face.size());
        font.setBold(face.bold());
        font.setColor(face.colour());
        return font;
    }

    private static XSSFColor colour(int red, int green, int blue) {
        return new XSSFColor(new byte[] {(byte) red, (byte) green, (byte) blue});
    }
}
