package kerbfolio.workbook;

import kerbfolio.check.Bound;
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
     * The word.
     *
     * @param met what is said where the whole uncertainty lies on the allowed side
     */
    static String of(Limit limit, Verdict met, String figure, String reach, String bound, String margin) {
        String surely = allows(limit.bound(), margin + "-" + reach, figure, bound);
        String perhaps = allows(limit.bound(), margin + "+" + reach, figure, bound);
        return "IF(ISNUMBER(" + margin + "),IF(" + surely + "," + quoted(met) + ",IF(" + perhaps + ","
                + quoted(Verdict.UNDECIDED) + "," + quoted(Verdict.NOT_MET) + "))," + quoted(Verdict.NO_EVIDENCE) + ")";
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
