package kerbfolio.checks.highvoltage;

import kerbfolio.JobText;
import kerbfolio.TractionText;

/** The sound car with another setting of its battery monitor. */
final class MonitorText {
    private MonitorText() {}

    /** One text of the monitor's entry, which stands there once, in place of another or of itself. */
    static JobText with(String from, String to) {
        JobText sound = TractionText.sound();
        return from.equals(to) ? sound : sound.alter("pack.monitors", "monitor", from, to);
    }

    static JobText without() {
        return TractionText.sound().without("pack.monitors");
    }
}
