package kerbfolio.checks.highvoltage;

/** The subjects of high voltage beside the circuit itself. */
final class Sheets {
    static final String TOUCH = "isolation and touch";
    static final String CABLES = "cables and fuses";
    static final String BATTERY = "battery and charging";

    private Sheets() {}
}
