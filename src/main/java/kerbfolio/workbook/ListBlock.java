package kerbfolio.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Declared;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;

/**
 * Lists over the same things: one row per part, load or lift, one column per list. Figures stand in SI, as a formula
 * that sums over the column takes them.
 */
final class ListBlock implements Block {
    private static final int HEAD_ROWS = 3;

    private record Column(Declared declared, List<Term> terms) {}

    private final Map<List<Integer>, Column> columns = new LinkedHashMap<>();
    private final int entries;

    ListBlock(int entries) {
        this.entries = entries;
    }

    /** What each entry of a list belongs to: the path of its part or load. Without such paths a list stands alone. */
    static Optional<List<String>> things(List<Term> terms) {
        var things = new ArrayList<String>();
        for (Term term : terms) {
            String path = path(Figures.bare(term));
            int end = path.lastIndexOf(']');
            if (end < 0) {
                return Optional.empty();
            }
            things.add(path.substring(0, end + 1));
        }
        return things.isEmpty() ? Optional.empty() : Optional.of(things);
    }

    private static String path(Term term) {
        if (term instanceof Known known) {
            return known.path();
        }
        return term instanceof Absent absent ? absent.path() : "";
    }

    void add(List<Integer> numbers, Declared declared, List<Term> terms) {
        columns.putIfAbsent(numbers, new Column(declared, terms));
    }

    /** A list without entries keeps one row of nothing, so that there is something to sum over. */
    static int rows(int entries) {
        return Math.max(1, entries);
    }

    @Override
    public int height() {
        return HEAD_ROWS + rows(entries) + 1;
    }

    @Override
    public int inputs() {
        return Math.max(0, columns.size() - (TradeSheet.INPUTS - TradeSheet.RESULT));
    }

    @Override
    public void settle(AddressBook addresses, String sheet, int top) {
        int column = TradeSheet.RESULT;
        for (Map.Entry<List<Integer>, Column> entry : columns.entrySet()) {
            var si = entry.getValue().declared().unit().coherent();
            addresses.settleList(entry.getKey(), new Spot(sheet, top + HEAD_ROWS, column, si), rows(entries));
            column++;
        }
    }

    @Override
    public void write(AddressBook addresses, Pen pen, int top) {
        pen.text(top, TradeSheet.SUBJECT, "List: " + title(), Look.HEADING);
        pen.text(top + 2, TradeSheet.SUBJECT, "in SI, as summed", Look.HEAD);
        int at = TradeSheet.RESULT;
        for (Column column : columns.values()) {
            Declared declared = column.declared();
            pen.text(top + 1, at, declared.meaning(), Look.SMALL_HEAD);
            pen.text(
                    top + 2,
                    at,
                    TradeSheet.symbol(declared.symbol(), declared.unit().coherent()),
                    Look.FIGURE_HEAD);
            entries(addresses, pen, top + HEAD_ROWS, at, column);
            at++;
        }
    }

    private static void entries(AddressBook addresses, Pen pen, int first, int at, Column column) {
        if (column.terms().isEmpty()) {
            pen.text(first, TradeSheet.SUBJECT, "none", Look.TEXT);
            pen.number(first, at, 0, Look.FIGURE, "0");
        }
        for (int i = 0; i < column.terms().size(); i++) {
            Term term = column.terms().get(i);
            if (at == TradeSheet.RESULT) {
                pen.text(first + i, TradeSheet.SUBJECT, term.name(), Look.TEXT);
            }
            Entry.write(
                    addresses,
                    pen,
                    first + i,
                    at,
                    term,
                    column.declared().unit().coherent());
        }
    }

    private String title() {
        return String.join(
                ", ",
                columns.values().stream()
                        .map(column -> column.declared().meaning())
                        .toList());
    }
}
