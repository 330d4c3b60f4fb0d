package kerbfolio.workbook;

import java.util.Optional;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/** A cell that takes a figure from where it stands and brings it into the unit asked for. */
final class Entry {
    private Entry() {}

    static void write(AddressBook addresses, Pen pen, int row, int column, Term term, Unit unit) {
        String expression = addresses.spot(term).in(unit, pen.sheet().getSheetName());
        Optional<Amount> amount = term.amount();
        if (amount.isPresent()) {
            double number = unit.fromSi(amount.get().si());
            pen.formula(row, column, expression, number, Look.FIGURE, Decimals.of(term, unit));
        } else {
            pen.formula(row, column, expression, Pen.NOTHING, Look.FIGURE);
        }
    }
}
