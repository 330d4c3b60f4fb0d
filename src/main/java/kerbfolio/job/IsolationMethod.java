package kerbfolio.job;

/** How isolation was measured. */
public enum IsolationMethod {
    VOLTMETER("voltmeter"),
    TESTER("tester"),
    MONITOR("monitor");

    private final String key;

    IsolationMethod(String key) {
        this.key = key;
    }

    /** As it is written in the job file and on paper. */
    @Override
    public String toString() {
        return key;
    }
}
