package kerbfolio.car;

import java.util.function.Function;
import kerbfolio.formula.Term;
import kerbfolio.job.Electrical;
import kerbfolio.job.Part;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Sense;
import org.jspecify.annotations.Nullable;

/** The electrical ratings of a part as terms: stated by its data sheet, absent where nobody wrote them. */
public final class Nameplate {
    private final Evidence evidence;
    private final Part part;

    Nameplate(Evidence evidence, Part part) {
        this.evidence = evidence;
        this.part = part;
    }

    public Term minVoltage() {
        return rating("min-voltage", "least voltage", "V", Electrical::minVoltage);
    }

    public Term maxVoltage() {
        return rating("max-voltage", "highest permitted voltage", "V", Electrical::maxVoltage);
    }

    public Term continuousCurrent() {
        return rating("continuous-current", "continuous current", "A", Electrical::continuousCurrent);
    }

    public Term peakCurrent() {
        return rating("peak-current", "peak current", "A", Electrical::peakCurrent);
    }

    public Term resistance() {
        return rating("resistance", "resistance", "Ω", Electrical::resistance);
    }

    public Term pulseEnergy() {
        return rating("pulse-energy", "energy of one pulse", "J", Electrical::pulseEnergy);
    }

    public Term capacitance() {
        return rating("capacitance", "capacitance", "µF", Electrical::capacitance);
    }

    public Term yCapacitance() {
        return rating("y-capacitance", "capacitance of each pole to the chassis", "µF", Electrical::yCapacitance);
    }

    public Term bleed() {
        return rating("bleed", "bleed resistance", "kΩ", Electrical::bleed);
    }

    /** A wait stated as a bound counts as its figure: nobody waits shorter because somebody wrote "at least". */
    public Term makersWait() {
        return rating("makers-wait", "wait its maker states", "min", electrical -> figure(electrical.makersWait()));
    }

    private static @Nullable Quantity figure(@Nullable Quantity quantity) {
        return quantity == null
                ? null
                : new Quantity(Sense.VALUE, quantity.digits(), quantity.unit(), quantity.half(), quantity.text());
    }

    private Term rating(String key, String name, String unit, Function<Electrical, @Nullable Quantity> of) {
        Electrical electrical = part.electrical();
        return evidence.stated(
                "parts[" + part.id() + "].electrical." + key,
                name + " of " + part.title(),
                unit,
                electrical == null ? null : of.apply(electrical),
                electrical == null ? null : electrical.from());
    }
}
