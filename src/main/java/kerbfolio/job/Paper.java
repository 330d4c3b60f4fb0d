package kerbfolio.job;

/** The sheet the dossier is printed on. */
public enum Paper {
    A4("a4"),
    LETTER("letter");

    private final String key;

    Paper(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
