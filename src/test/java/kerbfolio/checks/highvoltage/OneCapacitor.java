package kerbfolio.checks.highvoltage;

import kerbfolio.JobText;
import kerbfolio.TractionText;

/** The sound car with a hundred cell groups and one capacitor, the inverter's, so that the figures can be done by hand. */
final class OneCapacitor {
    /** The only bus of the car. */
    static final String BUS = "junction-box + inverter + charger + converter + heater";

    private static final String NO_BLEED = "bleed: \"> 10 MΩ\"";

    private OneCapacitor() {}

    /** @param cell highest voltage of a cell: a hundredth of the pack's */
    static JobText of(String cell, String capacitance, String bleed) {
        return TractionText.sound()
                .confirming("un-ece", "low-voltage, supply-current")
                .with("pack.modules", "\"25\"")
                .alter("pack.boxes", "rear-box", "14", "17")
                .with("pack.cell", "{ from: maker, max-voltage: " + cell + " }")
                .alter(
                        "parts",
                        "inverter",
                        "capacitance: 500 µF, y-capacitance: 0.2 µF, bleed: 40 kΩ",
                        "y-capacitance: 0.2 µF, capacitance: " + capacitance + ", bleed: " + bleed)
                .alter("parts", "junction-box", "capacitance: 1 µF", "capacitance: 0 µF")
                .alter("parts", "junction-box", "bleed: 1000 kΩ", NO_BLEED)
                .alter("parts", "charger", "capacitance: 20 µF", "capacitance: 0 µF")
                .alter("parts", "charger", "bleed: 500 kΩ", NO_BLEED)
                .alter("parts", "converter", "capacitance: 10 µF", "capacitance: 0 µF")
                .alter("parts", "converter", "bleed: 500 kΩ", NO_BLEED)
                .alter("parts", "heater", "capacitance: 2 µF", "capacitance: 0 µF")
                .alter("parts", "heater", "bleed: 200 kΩ", NO_BLEED);
    }
}
