package kerbfolio.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.check.Examination;
import kerbfolio.formula.Declared;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/**
 * One formula with its rows: an examination, or workings that others lean on.
 *
 * @param title the question, or what the figures are
 * @param note id and sources
 * @param formula the formula of all rows; empty if none of them has one
 * @param lines the rows
 */
record FormulaBlock(String title, String note, Optional<Formula> formula, List<Line> lines) implements Block {
    private static final int HEAD_ROWS = 5;

    /**
     * A row.
     *
     * @param examined its finding; empty for a working that only others lean on
     */
    record Line(String subject, Term result, Optional<Examination.Row> examined) {}

    FormulaBlock {
        lines = List.copyOf(lines);
    }

    @Override
    public int height() {
        return HEAD_ROWS + lines.size() + 1;
    }

    @Override
    public int inputs() {
        return formula.map(f -> f.symbols().size()).orElse(0);
    }

    @Override
    public void settle(AddressBook addresses, String sheet, int top) {
        for (int i = 0; i < lines.size(); i++) {
            Term result = lines.get(i).result();
            if (result instanceof Working) {
                addresses.settle(result, new Spot(sheet, top + HEAD_ROWS + i, TradeSheet.RESULT, result.unit()));
            }
        }
    }

    @Override
    public void write(AddressBook addresses, Pen pen, int top) {
        pen.text(top, TradeSheet.SUBJECT, title, Look.HEADING);
        pen.text(top + 1, TradeSheet.SUBJECT, formula.map(FormulaBlock::words).orElse("no formula"), Look.LINE);
        pen.text(top + 2, TradeSheet.SUBJECT, note, Look.SMALL_LINE);
        heads(pen, top + 3);
        for (int i = 0; i < lines.size(); i++) {
            line(addresses, pen, top + HEAD_ROWS + i, lines.get(i));
        }
    }

    private static String words(Formula formula) {
        String needs = formula.needs().isEmpty() ? "" : "     needs " + String.join(" and ", formula.needs());
        return formula.text() + needs;
    }

    private void heads(Pen pen, int row) {
        for (int column = 0; column < TradeSheet.INPUTS; column++) {
            pen.text(row + 1, column, "", Look.HEAD);
        }
        formula.ifPresent(f -> {
            head(pen, row, TradeSheet.RESULT, f.result());
            int column = TradeSheet.INPUTS;
            for (Declared symbol : f.symbols()) {
                head(pen, row, column, symbol);
                column++;
            }
        });
    }

    private static void head(Pen pen, int row, int column, Declared declared) {
        pen.text(row, column, declared.meaning(), Look.SMALL_HEAD);
        pen.text(row + 1, column, TradeSheet.symbol(declared.symbol(), declared.unit()), Look.FIGURE_HEAD);
    }

    private static void line(AddressBook addresses, Pen pen, int row, Line line) {
        Term result = line.result();
        pen.text(row, TradeSheet.SUBJECT, line.subject(), Look.TEXT);
        if (result instanceof Working working) {
            computed(addresses, pen, row, working);
        } else {
            Entry.write(addresses, pen, row, TradeSheet.RESULT, result, result.unit());
        }
        pen.text(row, TradeSheet.UNIT, result.unit().text(), Look.TEXT);
        reach(pen, row, result);
        for (int column = TradeSheet.BOUND; column < TradeSheet.INPUTS; column++) {
            pen.blank(row, column, Look.TEXT);
        }
        line.examined().ifPresent(examined -> Judgement.write(addresses, pen, row, examined));
    }

    /** The uncertainty is found by moving every cause, which no cell could hold: it is the figure at issue. */
    private static void reach(Pen pen, int row, Term result) {
        Optional<Amount> amount = result.amount();
        if (amount.isPresent()) {
            double reach = result.unit().differenceFromSi(amount.get().expanded());
            pen.number(row, TradeSheet.REACH, reach, Look.FIGURE, Decimals.ofReach(amount.get(), result.unit()));
        } else {
            pen.text(row, TradeSheet.REACH, Pen.NOTHING, Look.FIGURE);
        }
    }

    private static void computed(AddressBook addresses, Pen pen, int row, Working working) {
        String sheet = pen.sheet().getSheetName();
        var cells = new LinkedHashMap<String, String>();
        var counted = new ArrayList<String>();
        int expected = 0;
        int column = TradeSheet.INPUTS;
        for (Map.Entry<String, List<Term>> input : working.inputs().entrySet()) {
            Declared declared = declared(working.formula(), input.getKey());
            List<Term> terms = input.getValue();
            if (declared.each()) {
                String range = addresses.range(terms, sheet);
                cells.put(declared.symbol(), range);
                pen.text(row, column, range, Look.SMALL);
                expected += ListBlock.rows(terms.size());
            } else {
                cells.put(declared.symbol(), Pen.address(row, column));
                Entry.write(addresses, pen, row, column, terms.get(0), declared.unit());
                expected++;
            }
            counted.add(cells.get(declared.symbol()));
            column++;
        }
        result(pen, row, working, cells, "COUNT(" + String.join(",", counted) + ")<" + expected);
    }

    /** A working that had no result at issue has none here: its uncertainty is not known either. */
    private static void result(Pen pen, int row, Working working, Map<String, String> cells, String incomplete) {
        Optional<Amount> amount = working.amount();
        if (amount.isEmpty()) {
            pen.text(row, TradeSheet.RESULT, Pen.NOTHING, Look.FIGURE);
            return;
        }
        Formula formula = working.formula();
        String value = formula.cell(symbol -> cell(cells, symbol));
        List<String> needs = formula.cellNeeds(symbol -> cell(cells, symbol));
        String guarded = needs.isEmpty()
                ? value
                : "IF(AND(" + String.join(",", needs) + ")," + value + ",\"" + Pen.NOTHING + "\")";
        Unit unit = working.unit();
        pen.formula(
                row,
                TradeSheet.RESULT,
                "IF(" + incomplete + ",\"" + Pen.NOTHING + "\"," + guarded + ")",
                unit.fromSi(amount.get().si()),
                Look.FIGURE,
                Decimals.of(working, unit));
    }

    private static String cell(Map<String, String> cells, String symbol) {
        String cell = cells.get(symbol);
        if (cell == null) {
            throw new IllegalStateException("no cell for " + symbol);
        }
        return cell;
    }

    private static Declared declared(Formula formula, String symbol) {
        return formula.symbols().stream()
                .filter(declared -> declared.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }
}
