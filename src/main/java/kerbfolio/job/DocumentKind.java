package kerbfolio.job;

/** What kind of paper a document is. */
public enum DocumentKind {
    WEIGHBRIDGE_TICKET("weighbridge-ticket"),
    TEST_REPORT("test-report"),
    PART_APPROVAL("part-approval"),
    DRAWING("drawing"),
    MANUAL("manual"),
    INSURANCE("insurance"),
    AUTHORITY_PAPER("authority-paper"),
    OTHER("other");

    private final String key;

    DocumentKind(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
