package kerbfolio.fingerprint;

/** What can be said of a PDF somebody holds. */
public enum Answer {
    HOLDS("The record holds."),
    CHANGED("The record does not hold: this PDF was changed after it was issued."),
    OTHER_JOB("The record does not hold: it was made from another job file, or other files beside it."),
    OTHER_PROGRAM("The record cannot be shown to hold: another version of the program issued it."),
    OTHER_SET("The record does not hold with the requirement sets of this program."),
    OTHER_TEMPLATES("The record cannot be shown to hold: it was issued with other templates."),
    REFUSED("The record cannot be shown to hold: this program refuses what it was made from."),
    NOT_OURS("This is no dossier of this program.");

    private final String words;

    Answer(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
