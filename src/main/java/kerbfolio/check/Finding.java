package kerbfolio.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;

/**
 * What was found for one subject. The verdict is asked, never stored.
 *
 * @param subject which axle, cable or part
 * @param result the figure found: a working, or the term that is missing
 * @param limit what the home set asks; empty for a working without a limit
 * @param others what the sets printed for comparison ask; they hold nothing
 */
public record Finding(String subject, Term result, Optional<Limit> limit, List<Limit> others) {

    /** A finding judged by the home set's limit of that key, where it has one. */
    public static Finding judged(String subject, Term result, Limits limits, String key) {
        return new Finding(subject, result, limits.find(key), limits.others(key));
    }

    /** A working that is printed and not judged. */
    public static Finding unjudged(String subject, Term result) {
        return new Finding(subject, result, Optional.empty(), List.of());
    }

    public Verdict verdict() {
        if (result.amount().isEmpty()) {
            return Verdict.NO_EVIDENCE;
        }
        return limit.map(l -> l.judge(result)).orElse(Verdict.NO_LIMIT);
    }

    /** The working, unless the result is a plain term. */
    public Optional<Working> working() {
        return result instanceof Working working ? Optional.of(working) : Optional.empty();
    }

    /** What is lacking, by name; or why what is there cannot be used. */
    public String lack() {
        boolean onlyUnrecorded =
                !result.missing().isEmpty() && result.missing().stream().allMatch(Absent::isUnrecorded);
        return onlyUnrecorded
                ? "not recorded: "
                        + result.missing().stream().map(Absent::name).distinct().collect(Collectors.joining(", "))
                : result.origin();
    }

    /** Why a figure that is met does not clear its gate. */
    public List<String> reservations() {
        return limit.map(l -> l.reservations(result)).orElseGet(result::reservations);
    }
}
