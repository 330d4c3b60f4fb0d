package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Charging;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.source.Source;

/** The owner plans his night by it. */
@Sheet(Sheets.BATTERY)
public final class ChargeTime implements Check {
    /** Three phases are taken from conductor to conductor, so that one root serves both kinds of supply. */
    static final Formula SUPPLY = Formula.of("P_s = sqrt(n)*U*I")
            .giving("power taken from the supply", "kW")
            .with("n", "phases", "1")
            .with("U", "voltage of the supply", "V")
            .with("I", "current of the charge", "A")
            .from(Source.CIRCUITS.clause("power of one and of three phases"))
            .build();

    static final Formula TIME = Formula.of("t = E*(s_1 - s_0)/min(P_c, eta*P_s)")
            .giving("time of a charge", "h")
            .with("E", "energy of the pack", "kWh")
            .with("s_0", "state of charge at the start", "%")
            .with("s_1", "state of charge at the end", "%")
            .with("P_c", "largest power of the charger to the pack", "kW")
            .with("eta", "efficiency of the charger", "%")
            .with("P_s", "power taken from the supply", "kW")
            .needs("s_1 > s_0")
            .needs("min(P_c, eta*P_s) > 0*[kW]")
            .from(Source.CIRCUITS.clause("energy over power"))
            .build();

    @Override
    public String question() {
        return "How long does a charge take, were its power never reduced towards the end?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.empty();
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Charging charging = car.charging();
        return charging.chargers().isEmpty()
                ? Stream.of(Finding.unjudged(
                        "charger", Absent.unrecorded("parts", "a part whose role is charger, with its ratings", "h")))
                : charging.chargers().stream().map(part -> Finding.unjudged(part.id(), time(car, charging, part)));
    }

    private static Working time(Car car, Charging charging, Part charger) {
        Working supply = Working.fill(SUPPLY)
                .put("n", charging.phases(charger))
                .put("U", charging.supplyVoltage())
                .put("I", charging.current(charger))
                .work();
        return Working.fill(TIME)
                .put("E", car.pack().energy())
                .put("s_0", charging.fromCharge())
                .put("s_1", charging.toCharge())
                .put("P_c", charging.power(charger))
                .put("eta", charging.efficiency(charger))
                .put("P_s", supply)
                .work();
    }
}
