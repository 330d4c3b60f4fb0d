package kerbfolio.checks.highvoltage;

import kerbfolio.JobText;
import kerbfolio.TractionText;

/** The sound job with the limits of this trade confirmed, so that what is met is met. */
final class Confirmed {
    private static final String LIMITS = "voltage-class, low-voltage, isolation-direct-current,"
            + " isolation-with-alternating-current, isolation-meter, isolation-monitor-least, isolation-monitor-most,"
            + " isolation-monitor-warning, bonding, bonding-current, touch-inside, touch-elsewhere, touch-opened,"
            + " touch-dead-time, warning-symbol, cable-colour";

    private Confirmed() {}

    static JobText sound() {
        return TractionText.sound().confirming("un-ece", LIMITS);
    }

    /** 100 cells: 400 V when full, 360 V nominal. */
    static JobText fourHundredVolts() {
        return Confirmed.sound()
                .with("pack.modules", "\"100\"")
                .with("pack.module", "{ from: maker, cell-groups: \"1\" }")
                .with("pack.cell", "{ from: maker, nominal-voltage: 3.6 V, max-voltage: 4.0 V, min-voltage: 3.0 V }")
                .drop("readings.isolation", "iso-1")
                .drop("readings.isolation", "iso-2");
    }

    /** A reading by voltmeter with some parts joined; the text of what was read. */
    static String voltmeter(String joined, String read) {
        return "{ id: iso, method: voltmeter, instrument: voltmeter, resistor-instrument: ohmmeter, date: 2026-09-30,"
                + " by: A. Tester, joined: [ " + joined + " ], " + read + " }";
    }

    /** A reading by insulation tester or by the monitor. */
    static String shown(String method, String joined, String read) {
        return "{ id: " + method + ", method: " + method + ", instrument: tester, date: 2026-09-30, by: A. Tester,"
                + " joined: [ " + joined + " ], " + read + " }";
    }
}
