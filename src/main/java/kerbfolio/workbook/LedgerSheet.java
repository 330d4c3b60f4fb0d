package kerbfolio.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import kerbfolio.car.Ledger;
import kerbfolio.dossier.Dossier;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Removed;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;
import org.jspecify.annotations.Nullable;

/** What went in and what came out, with mass and place as in the register of readings, and what became of it. */
final class LedgerSheet {
    static final String NAME = "Ledger";

    private static final int HEAD = 1;
    private static final int MASS = 1;
    private static final int SI_MASS = 3;
    private static final int PLACE = 4;
    private static final int BASIS = 6;
    private static final int[] WIDTHS = {34, 12, 8, 12, 14, 8, 13, 46, 60};
    private static final Unit KILOGRAM = Unit.of("kg");

    private final AddressBook addresses;
    private final Pen pen;
    private int row = HEAD + 2;

    private LedgerSheet(AddressBook addresses, Pen pen) {
        this.addresses = addresses;
        this.pen = pen;
    }

    static void write(Dossier dossier, AddressBook addresses, Binding binding) {
        Ledger ledger = dossier.car().ledger();
        Pen pen = binding.sheet(NAME, HEAD, WIDTHS);
        pen.text(0, 0, "Ledger: what went in and what came out", Look.TITLE);
        pen.text(HEAD, 0, "what", Look.HEAD);
        pen.text(HEAD, MASS, "mass", Look.FIGURE_HEAD);
        pen.text(HEAD, MASS + 1, "unit", Look.HEAD);
        pen.text(HEAD, SI_MASS, "mass [kg]", Look.FIGURE_HEAD);
        pen.text(HEAD, PLACE, "place behind the front axle", Look.FIGURE_HEAD);
        pen.texts(HEAD, PLACE + 1, Look.HEAD, "unit", "basis of the mass", "instrument and date, or who", "fate");
        var sheet = new LedgerSheet(addresses, pen);
        sheet.side("Fitted", ledger.fitted(), new HashMap<>());
        sheet.side("Taken out", ledger.removed(), fates(dossier.car().job().removed()));
    }

    private static Map<String, String> fates(List<Removed> removed) {
        var fates = new HashMap<String, String>();
        for (Removed item : removed) {
            String back = item.puttingBack();
            fates.put(item.id(), or(item.fate()) + (back == null ? "" : "; putting it back: " + back));
        }
        return fates;
    }

    private static String or(@Nullable String fate) {
        return fate == null ? "not recorded" : fate;
    }

    private void side(String title, List<Ledger.Line> lines, Map<String, String> fates) {
        pen.text(row, 0, title, Look.HEADING);
        row++;
        int first = row;
        for (Ledger.Line line : lines) {
            pen.text(row, 0, line.name(), Look.TEXT);
            written(MASS, line.mass());
            if (addresses.has(line.mass())) {
                Entry.write(addresses, pen, row, SI_MASS, line.mass(), KILOGRAM);
            } else {
                pen.text(row, SI_MASS, Pen.NOTHING, Look.FIGURE);
            }
            written(PLACE, line.x());
            pen.text(row, BASIS, line.mass().basis().word(), Look.TEXT);
            pen.text(row, BASIS + 1, line.mass().origin(), Look.TEXT);
            pen.text(row, BASIS + 2, fates.getOrDefault(line.id(), ""), Look.TEXT);
            row++;
        }
        if (lines.isEmpty()) {
            pen.text(row, 0, "not recorded", Look.TEXT);
        } else {
            together(lines, first);
        }
        row += 2;
    }

    /** A figure in the unit it was written in. */
    private void written(int column, Term term) {
        Optional<Amount> amount = term.amount();
        if (amount.isPresent() && addresses.has(term)) {
            Spot si = addresses.spot(term);
            var number = new Spot(si.sheet(), si.row(), ReadingsSheet.NUMBER, term.unit());
            double value = term instanceof Known known
                    ? known.quantity().number()
                    : term.unit().fromSi(amount.get().si());
            pen.formula(row, column, number.from(NAME), value, Look.FIGURE, Pen.AS_TYPED);
        } else {
            pen.text(row, column, Pen.NOTHING, Look.FIGURE);
        }
        pen.text(row, column + 1, term.unit().text(), Look.TEXT);
    }

    /** What is known of the side in all; a part without a mass adds nothing to it. */
    private void together(List<Ledger.Line> lines, int first) {
        double sum = lines.stream()
                .flatMap(line -> line.mass().amount().stream())
                .mapToDouble(Amount::si)
                .sum();
        boolean complete = lines.stream().allMatch(line -> line.mass().amount().isPresent());
        pen.text(row, 0, complete ? "together" : "together, as far as recorded", Look.TEXT);
        String cells = Pen.address(first, SI_MASS) + ":" + Pen.address(row - 1, SI_MASS);
        for (int column = MASS; column < WIDTHS.length; column++) {
            pen.blank(row, column, Look.TEXT);
        }
        pen.formula(row, SI_MASS, "SUM(" + cells + ")", sum, Look.FIGURE, Decimals.of(sum, 0));
    }
}
