package kerbfolio.formula;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;

/** A working laid out in a sheet: a column per symbol, in its declared unit, lists in SI. */
final class CellSheet {
    private static final int FORMULA_ROW = 20;

    private final Working working;
    private final Map<String, String> addresses = new HashMap<>();

    CellSheet(Working working) {
        this.working = working;
        working.inputs().forEach((symbol, terms) -> {
            String letter = CellReference.convertNumToColString(column(symbol));
            boolean each = working.formula().declared(symbol).each();
            addresses.put(symbol, each ? letter + "1:" + letter + terms.size() : letter + "1");
        });
    }

    private int column(String symbol) {
        return List.copyOf(working.inputs().keySet()).indexOf(symbol) + 1;
    }

    double result() {
        return evaluate(List.of(working.formula().cell(this::address))).get(0);
    }

    List<Double> needs() {
        return evaluate(working.formula().cellNeeds(this::address));
    }

    private List<Double> evaluate(List<String> formulas) {
        try (Workbook book = new HSSFWorkbook()) {
            Sheet sheet = book.createSheet();
            for (int row = 0; row <= FORMULA_ROW; row++) {
                sheet.createRow(row);
            }
            working.inputs().forEach((symbol, terms) -> fill(sheet, symbol, terms));
            var evaluator = book.getCreationHelper().createFormulaEvaluator();
            return formulas.stream()
                    .map(formula -> {
                        var cell = sheet.getRow(FORMULA_ROW).createCell(0);
                        cell.setCellFormula(formula);
                        evaluator.clearAllCachedResultValues();
                        return evaluator.evaluate(cell).getNumberValue();
                    })
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void fill(Sheet sheet, String symbol, List<Term> terms) {
        Declared declared = working.formula().declared(symbol);
        for (int row = 0; row < terms.size(); row++) {
            double si = terms.get(row).amount().orElseThrow().si();
            sheet.getRow(row)
                    .createCell(column(symbol))
                    .setCellValue(declared.each() ? si : declared.unit().fromSi(si));
        }
    }

    private String address(String symbol) {
        String address = addresses.get(symbol);
        if (address == null) {
            throw new AssertionError("no cell for " + symbol);
        }
        return address;
    }

    @Override
    public String toString() {
        return working.formula() + " as " + working.formula().cell(this::address);
    }
}
