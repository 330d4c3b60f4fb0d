package kerbfolio.workbook;

import java.util.Arrays;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What may be written into a column of a sheet: one of some words, or a date. */
final class Choices {
    private final XSSFSheet sheet;
    private final int first;
    private final int last;

    /** For the rows from the first to the last, counted from 0. */
    Choices(XSSFSheet sheet, int first, int last) {
        this.sheet = sheet;
        this.first = first;
        this.last = last;
    }

    void words(int column, Object... words) {
        String[] choices = Arrays.stream(words).map(Object::toString).toArray(String[]::new);
        var constraint = sheet.getDataValidationHelper().createExplicitListConstraint(choices);
        add(constraint, column, "One of: " + String.join(", ", choices) + ".");
    }

    void days(int... columns) {
        var constraint = sheet.getDataValidationHelper()
                .createDateConstraint(
                        DataValidationConstraint.OperatorType.GREATER_OR_EQUAL, "DATE(1990,1,1)", null, null);
        for (int column : columns) {
            add(constraint, column, "A date, such as 2026-10-14.");
        }
    }

    private void add(DataValidationConstraint constraint, int column, String what) {
        DataValidation validation = sheet.getDataValidationHelper()
                .createValidation(constraint, new CellRangeAddressList(first, last, column, column));
        validation.setShowErrorBox(true);
        validation.createErrorBox("Not understood", what);
        sheet.addValidationData(validation);
    }
}
