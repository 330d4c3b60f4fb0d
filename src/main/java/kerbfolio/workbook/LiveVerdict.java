package kerbfolio.workbook;

import kerbfolio.check.Bound;
import kerbfolio.check.Examination;
import kerbfolio.check.Limit;
import kerbfolio.check.Verdict;

/** The verdict as a cell works it out: from the live figure, the live limit and the uncertainty the figure had at issue. */
final class LiveVerdict {
    /** Figures closer than this, relatively, are the same, as in the verdict at issue. */
    private static final String DUST = "0.000000000001";

    private LiveVerdict() {}

    /** What is left to the limit: positive on the allowed side. */
    static String margin(Limit limit, String figure, String bound) {
        String left = limit.bound().isCeiling() ? bound + "-" + figure : figure + "-" + bound;
        return "IF(COUNT(" + figure + "," + bound + ")<2,\"" + Pen.NOTHING + "\"," + left + ")";
    }

    /**
     * What is said, but for a figure not met, which is not met whoever says what.
     *
     * @param met where the whole uncertainty lies on the allowed side
     * @param undecided where the limit lies within the uncertainty
     * @param missing where there is no figure
     */
    record Words(Verdict met, Verdict undecided, Verdict missing) {
        static Words of(Examination.Row row) {
            Verdict met = row.finding().reservations().isEmpty() ? Verdict.MET : Verdict.MET_UNCONFIRMED;
            Verdict missing = row.verdict() == Verdict.NOT_APPLICABLE ? Verdict.NOT_APPLICABLE : Verdict.NO_EVIDENCE;
            return new Words(met, Verdict.UNDECIDED, missing);
        }
    }

    /** The word. */
    static String of(Limit limit, Words words, String figure, String reach, String bound, String margin) {
        String surely = allows(limit.bound(), margin + "-" + reach, figure, bound);
        String perhaps = allows(limit.bound(), margin + "+" + reach, figure, bound);
        return "IF(ISNUMBER(" + margin + "),IF(" + surely + "," + quoted(words.met()) + ",IF(" + perhaps + ","
                + quoted(words.undecided()) + "," + quoted(Verdict.NOT_MET) + "))," + quoted(words.missing()) + ")";
    }

    private static String allows(Bound bound, String inside, String figure, String limit) {
        String dust = DUST + "*MAX(ABS(" + figure + "),ABS(" + limit + "))";
        boolean equal = bound == Bound.AT_MOST || bound == Bound.AT_LEAST;
        return equal ? "(" + inside + ")>=-(" + dust + ")" : "(" + inside + ")>(" + dust + ")";
    }

    private static String quoted(Verdict verdict) {
        return "\"" + verdict + "\"";
    }
}
