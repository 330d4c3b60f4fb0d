package kerbfolio.workbook;

import java.util.Optional;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Unit;

/** The right half of an examination's row: the limit, what is left to it, and the verdict, live and at issue. */
final class Judgement {
    private Judgement() {}

    static void write(AddressBook addresses, Pen pen, int row, Examination.Row examined) {
        Verdict atIssue = examined.verdict();
        Term result = examined.finding().result();
        Optional<Limit> limit = examined.finding().limit();
        limit.ifPresent(l -> {
            pen.text(row, TradeSheet.BOUND, l.bound().toString(), Look.TEXT);
            Entry.write(addresses, pen, row, TradeSheet.LIMIT, l, result.unit());
        });
        pen.text(row, TradeSheet.VERDICT, atIssue.toString(), atIssue == Verdict.NO_LIMIT ? Look.TEXT : Look.WORD);
        pen.text(row, TradeSheet.AT_ISSUE, atIssue.toString(), Look.TEXT);
        if (limit.isPresent() && result.amount().isPresent()) {
            margin(pen, row, limit.get(), result, result.amount().get());
            // Where a small move of an input changes the law itself, no cell could say more than the verdict at issue.
            if (!(result instanceof Working working && working.flips())) {
                verdict(pen, row, limit.get(), examined);
            }
        }
    }

    private static void margin(Pen pen, int row, Limit limit, Term result, Amount amount) {
        Unit unit = result.unit();
        double number = unit.fromSi(amount.si());
        double bound = unit.fromSi(limit.value().si());
        double margin = limit.bound().isCeiling() ? bound - number : number - bound;
        pen.formula(
                row,
                TradeSheet.MARGIN,
                LiveVerdict.margin(limit, Pen.address(row, TradeSheet.RESULT), Pen.address(row, TradeSheet.LIMIT)),
                margin,
                Look.FIGURE,
                Decimals.of(margin, unit.differenceFromSi(amount.expanded())));
    }

    private static void verdict(Pen pen, int row, Limit limit, Examination.Row examined) {
        pen.formula(
                row,
                TradeSheet.VERDICT,
                LiveVerdict.of(
                        limit,
                        LiveVerdict.Words.of(examined),
                        Pen.address(row, TradeSheet.RESULT),
                        Pen.address(row, TradeSheet.REACH),
                        Pen.address(row, TradeSheet.LIMIT),
                        Pen.address(row, TradeSheet.MARGIN)),
                examined.verdict().toString(),
                Look.WORD);
    }
}
