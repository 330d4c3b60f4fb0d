package kerbfolio.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import kerbfolio.formula.Term;

/** Where each figure and each list of figures stands in the workbook. */
final class AddressBook {
    private record Range(Spot first, int rows) {}

    private final Figures figures;
    private final Map<Integer, Spot> spots = new HashMap<>();
    private final Map<List<Integer>, Range> lists = new HashMap<>();

    AddressBook(Figures figures) {
        this.figures = figures;
    }

    /** Enters a figure; its first place is the one others refer to. */
    void settle(Term term, Spot spot) {
        spots.putIfAbsent(figures.of(term), spot);
    }

    void settleList(List<Integer> numbers, Spot first, int rows) {
        lists.put(numbers, new Range(first, rows));
    }

    boolean has(Term term) {
        return spots.containsKey(figures.of(term));
    }

    Spot spot(Term term) {
        Spot spot = spots.get(figures.of(term));
        if (spot == null) {
            throw new IllegalStateException(term.name() + " stands nowhere in the workbook");
        }
        return spot;
    }

    /** The cells of a list, in SI, as a cell of a sheet writes them. */
    String range(List<Term> terms, String writing) {
        Range range = lists.get(figures.of(terms));
        if (range == null) {
            throw new IllegalStateException("a list stands nowhere in the workbook");
        }
        return range.first().down(range.rows(), writing);
    }
}
