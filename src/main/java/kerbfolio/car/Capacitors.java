package kerbfolio.car;

import java.util.ArrayList;
import kerbfolio.car.Circuit.Bus;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Electrical;
import kerbfolio.job.Part;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/**
 * The capacitors of one bus taken together: what they hold, and how fast it leaves them through the resistances that
 * always lie between the poles. A part without a capacitor says {@code capacitance: 0 µF}; a part without such a
 * resistance says {@code bleed: > 10 MΩ}, and then nothing is counted on.
 */
public final class Capacitors {
    static final Formula TOTAL = Formula.of("C = sum(c)")
            .giving("capacitance between the poles of the bus", "µF")
            .each("c", "capacitance of a part", "µF")
            .from(Source.CIRCUITS.clause("capacitors in parallel"))
            .build();

    static final Formula CONDUCTANCE = Formula.of("g = 1/r")
            .giving("conductance of a bleed resistance", "1/kΩ")
            .with("r", "bleed resistance of a part", "kΩ")
            .needs("r > 0*[kΩ]")
            .from(Source.CIRCUITS.clause("law of Ohm"))
            .build();

    static final Formula BLEED = Formula.of("R = 1/sum(g)")
            .giving("bleed resistance of the bus", "kΩ")
            .each("g", "conductance of a part", "1/kΩ")
            .from(Source.CIRCUITS.clause("resistances in parallel"))
            .build();

    /** A bus that starts under the limit has no time to wait. */
    static final Formula DECAY = Formula.of("t = R*C*max(ln(U_0/U_s), 0)")
            .giving("time until the bus is down to the limit", "s")
            .with("R", "bleed resistance of the bus", "kΩ")
            .with("C", "capacitance of the bus", "µF")
            .with("U_0", "highest working voltage", "V")
            .with("U_s", "voltage limit", "V")
            .needs("C > 0*[µF]")
            .needs("U_0 > 0*[V]")
            .needs("U_s > 0*[V]")
            .from(Source.CIRCUITS.clause("discharge of a capacitor through a resistance"))
            .build();

    static final Formula ENERGY = Formula.of("E = C*U^2/2")
            .giving("energy in the capacitors", "J")
            .with("C", "capacitance", "µF")
            .with("U", "voltage", "V")
            .from(Source.UN_R94.clause("Annex 11, total energy of the capacitors"))
            .build();

    private final Bus bus;
    private final Working total;
    private final Term bleed;

    Capacitors(Evidence evidence, Bus bus) {
        this.bus = bus;
        var capacitances = new ArrayList<Term>();
        var conductances = new ArrayList<Term>();
        for (Part part : bus.parts()) {
            var plate = new Nameplate(evidence, part);
            capacitances.add(plate.capacitance());
            if (!lacksBleed(part, plate.capacitance())) {
                conductances.add(Working.fill(CONDUCTANCE)
                        .named("conductance of the bleed resistance of " + part.title())
                        .put("r", plate.bleed())
                        .work());
            }
        }
        this.total = Working.fill(TOTAL)
                .named("capacitance of " + bus)
                .each("c", capacitances)
                .work();
        this.bleed = conductances.isEmpty()
                ? new Absent(
                        "parts[" + bus.parts().get(0).id() + "].electrical.bleed",
                        "bleed resistance of " + bus,
                        Unit.of("kΩ"),
                        "no part of this bus has a bleed resistance, so nothing discharges it by itself")
                : Working.fill(BLEED)
                        .named("bleed resistance of " + bus)
                        .each("g", conductances)
                        .work();
    }

    /** What is said to lie above a figure may be anything above it: nothing is counted on. */
    private static boolean lacksBleed(Part part, Term capacitance) {
        Electrical electrical = part.electrical();
        Quantity bleed = electrical == null ? null : electrical.bleed();
        boolean isEmpty =
                capacitance.amount().isPresent() && capacitance.amount().get().si() == 0;
        return bleed == null ? isEmpty : Evidence.isLowerBound(bleed);
    }

    public Bus bus() {
        return bus;
    }

    /** All capacitors between the poles; absent if one of them is not recorded. */
    public Working total() {
        return total;
    }

    /** All resistances that always lie between the poles; absent if one is not recorded or there is none. */
    public Term bleed() {
        return bleed;
    }

    /** Time the bus takes by itself from one voltage down to another; nothing that discharges on purpose is credited. */
    public Working decay(Term from, Term to) {
        return Working.fill(DECAY)
                .named("computed decay of " + bus)
                .put("R", bleed)
                .put("C", total)
                .put("U_0", from)
                .put("U_s", to)
                .work();
    }

    /** What the capacitors hold at a voltage. */
    public Working energy(Term voltage) {
        return Working.fill(ENERGY)
                .named("energy in the capacitors of " + bus)
                .put("C", total)
                .put("U", voltage)
                .work();
    }
}
