package kerbfolio.workbook;

import kerbfolio.check.Verdict;
import kerbfolio.release.GateState;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Looks that follow what a cell says at the moment; they read the same in black and white. */
final class Highlights {
    private Highlights() {}

    /** White on black what is not met, hatched what is not known. */
    static void verdicts(XSSFSheet sheet, int first, int last, int column) {
        words(sheet, first, last, column, Verdict.NOT_MET.toString(), Verdict.NO_EVIDENCE, Verdict.UNDECIDED);
    }

    /** The same for the state of a gate. */
    static void states(XSSFSheet sheet, int first, int last, int column) {
        words(sheet, first, last, column, GateState.HELD.toString(), GateState.NOT_EXAMINED);
    }

    /** Cells for which a formula is true at the moment are set off in bold italics; it is written for the first row. */
    static void cells(XSSFSheet sheet, CellRangeAddress cells, String formula) {
        var rule = sheet.getSheetConditionalFormatting().createConditionalFormattingRule(formula);
        rule.createFontFormatting().setFontStyle(true, true);
        apply(sheet, cells, rule);
    }

    private static void words(XSSFSheet sheet, int first, int last, int column, String against, Object... unknown) {
        var cells = new CellRangeAddress(first, Math.max(first, last), column, column);
        var inverse = equal(sheet, against);
        inverse.createFontFormatting().setFontColorIndex(IndexedColors.WHITE.index);
        fill(inverse, FillPatternType.SOLID_FOREGROUND, IndexedColors.BLACK);
        apply(sheet, cells, inverse);
        for (Object word : unknown) {
            var hatched = equal(sheet, word.toString());
            fill(hatched, FillPatternType.LESS_DOTS, IndexedColors.GREY_25_PERCENT);
            apply(sheet, cells, hatched);
        }
    }

    private static ConditionalFormattingRule equal(XSSFSheet sheet, String word) {
        return sheet.getSheetConditionalFormatting()
                .createConditionalFormattingRule(ComparisonOperator.EQUAL, "\"" + word + "\"");
    }

    private static void fill(ConditionalFormattingRule rule, FillPatternType pattern, IndexedColors colour) {
        var ground = rule.createPatternFormatting();
        ground.setFillPattern(pattern.getCode());
        if (pattern == FillPatternType.SOLID_FOREGROUND) {
            ground.setFillBackgroundColor(colour.index); // a solid conditional fill shows its background colour
        } else {
            ground.setFillForegroundColor(colour.index);
        }
    }

    private static void apply(XSSFSheet sheet, CellRangeAddress cells, ConditionalFormattingRule rule) {
        sheet.getSheetConditionalFormatting().addConditionalFormatting(new CellRangeAddress[] {cells}, rule);
    }
}
