package kerbfolio;

import java.util.List;
import kerbfolio.check.Finding;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.quantity.Amount;

/** A finding as a test asks it: in the unit its figure is given in. */
public record Found(Finding finding) {
    public Verdict verdict() {
        return finding.verdict();
    }

    /** The figure in its own unit. */
    public double value() {
        return value(finding.result());
    }

    /** Expanded uncertainty in the figure's own unit. */
    public double reach() {
        return reach(finding.result());
    }

    public String unit() {
        return finding.result().unit().text();
    }

    /** Why there is no figure, or why it does not clear. */
    public String why() {
        return finding.result().origin();
    }

    /** Where what is missing would stand. */
    public List<String> missing() {
        return finding.result().missing().stream().map(Absent::path).distinct().toList();
    }

    /** A term's figure in its own unit. */
    public static double value(Term term) {
        return term.unit().fromSi(amount(term).si());
    }

    /** A term's expanded uncertainty in its own unit. */
    public static double reach(Term term) {
        return term.unit().differenceFromSi(amount(term).expanded());
    }

    private static Amount amount(Term term) {
        return term.amount().orElseThrow(() -> new AssertionError(term.name() + ": " + term.origin()));
    }
}
