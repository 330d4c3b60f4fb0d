package kerbfolio.car;

import java.util.List;
import java.util.function.Function;
import kerbfolio.formula.Term;
import kerbfolio.job.ChargeReading;
import kerbfolio.job.ChargerRatings;
import kerbfolio.job.Job;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** What is known of a charge at the inlet: the supply, the lead, the pilot signal, and the chargers of the car. */
public final class Charging {
    private final Evidence evidence;
    private final List<Part> chargers;
    private final @Nullable ChargeReading reading;
    private final Term pilotCurrent;

    Charging(Evidence evidence, Job job) {
        this.evidence = evidence;
        this.chargers =
                job.parts().stream().filter(part -> part.role() == Role.CHARGER).toList();
        this.reading = job.readings() == null ? null : job.readings().charge();
        this.pilotCurrent = PilotSignal.current(
                evidence,
                evidence.measured(
                        "readings.charge.duty",
                        "duty of the pilot signal",
                        "%",
                        reading == null ? null : reading.duty(),
                        reading == null ? null : reading.instrument(),
                        reading == null ? null : reading.date()));
    }

    /** The chargers that are fitted. */
    public List<Part> chargers() {
        return chargers;
    }

    /** What the pilot signal allows; absent where it says no current. */
    public Term pilotCurrent() {
        return pilotCurrent;
    }

    public Term leadCurrent() {
        return supply("lead-current", "rated current of the charge lead", "A", ChargeReading::leadCurrent);
    }

    public Term breaker() {
        return supply("breaker", "rated current of the supply's breaker", "A", ChargeReading::breaker);
    }

    public Term supplyVoltage() {
        return supply("supply-voltage", "voltage of the supply", "V", ChargeReading::supplyVoltage);
    }

    public Term fromCharge() {
        return supply("from-charge", "state of charge at the start", "%", ChargeReading::fromCharge);
    }

    public Term toCharge() {
        return supply("to-charge", "state of charge at the end", "%", ChargeReading::toCharge);
    }

    public Term inputCurrent(Part charger) {
        return rating(charger, "input-current", "largest mains current", "A", ChargerRatings::inputCurrent);
    }

    public Term phases(Part charger) {
        return rating(charger, "phases", "phases", "1", ChargerRatings::phases);
    }

    public Term power(Part charger) {
        return rating(charger, "power", "largest power to the pack", "kW", ChargerRatings::power);
    }

    public Term efficiency(Part charger) {
        return rating(charger, "efficiency", "power given over power taken", "%", ChargerRatings::efficiency);
    }

    /** The smaller of what the pilot signal allows and what the charger takes; nothing is known of it without both. */
    public Term current(Part charger) {
        Term taken = inputCurrent(charger);
        if (pilotCurrent.amount().isEmpty() || taken.amount().isEmpty()) {
            return pilotCurrent.amount().isEmpty() ? pilotCurrent : taken;
        }
        return pilotCurrent.amount().get().si() <= taken.amount().get().si() ? pilotCurrent : taken;
    }

    private Term supply(String key, String name, String unit, Function<ChargeReading, @Nullable Quantity> of) {
        return evidence.stated(
                "readings.charge." + key,
                name,
                unit,
                reading == null ? null : of.apply(reading),
                reading == null ? null : reading.supplyFrom());
    }

    private Term rating(
            Part charger, String key, String name, String unit, Function<ChargerRatings, @Nullable Quantity> of) {
        ChargerRatings ratings = charger.charger();
        return evidence.stated(
                "parts[" + charger.id() + "].charger." + key,
                name + " of " + charger.title(),
                unit,
                ratings == null ? null : of.apply(ratings),
                ratings == null ? null : ratings.from());
    }
}
