package kerbfolio.check;

import kerbfolio.job.Confirmation;

/**
 * Who vouches for a limit.
 *
 * @param isConfirmed whether it may clear a gate
 * @param words as printed
 */
public record Standing(boolean isConfirmed, String words) {
    /** Recalled or seen only second-hand: it may hold, never clear. */
    public static final Standing UNCONFIRMED = new Standing(false, "unconfirmed");

    /** A rule this program sets itself; there is no document to confirm it against. */
    public static final Standing OWN_RULE = new Standing(true, "rule of this program");

    /** Somebody who holds the document read the figure there. */
    public static Standing confirmed(Confirmation confirmation) {
        return new Standing(
                true, "confirmed by " + confirmation.by() + ", " + confirmation.date() + ", " + confirmation.edition());
    }

    @Override
    public String toString() {
        return words;
    }
}
