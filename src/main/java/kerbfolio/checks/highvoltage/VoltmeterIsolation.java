package kerbfolio.checks.highvoltage;

import java.util.Optional;
import kerbfolio.car.Car;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.IsolationReading;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/**
 * Isolation by voltmeter and known resistor. The pole that reads more is the better isolated one, and the method gives
 * the resistance of the other, the lower rail, with any meter: the same meter lies across the same rail both times.
 */
final class VoltmeterIsolation {
    static final Formula LOWER_RAIL = Formula.of("R_i = R_o*U_b*(1/V_1' - 1/V_1)")
            .giving("isolation resistance of the lower rail", "kΩ")
            .with("R_o", "known resistor", "kΩ")
            .with("U_b", "voltage of the pack", "V")
            .with("V_1'", "larger reading with the resistor", "V")
            .with("V_1", "larger reading", "V")
            .with("V_2", "smaller reading", "V")
            .with("U_n", "nominal voltage", "V")
            .with("R_m", "resistance of the voltmeter", "MΩ")
            .needs("U_b >= U_n")
            .needs("V_1' > 0*[V]")
            .needs("V_1' < V_1")
            .needs("V_1 + V_2 <= 1.01*U_b")
            .needs("R_m > 0*[MΩ]")
            .from(Source.UN_R100.clause("annex 5A, voltmeter method"))
            .build();

    /** What the meter itself draws tells it; a meter that draws next to nothing tells nothing. */
    static final Formula PARALLEL = Formula.of("R_p = R_m*(U_b/(V_1 + V_2) - 1)")
            .giving("isolation resistance of both rails in parallel", "kΩ")
            .with("R_m", "resistance of the voltmeter", "MΩ")
            .with("U_b", "voltage of the pack", "V")
            .with("V_1", "larger reading", "V")
            .with("V_2", "smaller reading", "V")
            .needs("V_1 + V_2 > 0*[V]")
            .needs("V_1 + V_2 <= 0.995*U_b")
            .from(Source.CIRCUITS.clause("voltage divider of two rails and the meter"))
            .build();

    private static final double LEAST_CHANGE = 0.98;

    private final IsolationReading reading;
    private final Car car;
    private final Term minus;
    private final Term plus;

    VoltmeterIsolation(IsolationReading reading, Car car) {
        this.reading = reading;
        this.car = car;
        this.minus = volts("minus-to-chassis", "minus pole to chassis", reading.minusToChassis());
        this.plus = volts("plus-to-chassis", "plus pole to chassis", reading.plusToChassis());
    }

    /** The rail the resistance is of; empty while one of the two readings is missing. */
    Optional<String> lowerRail() {
        return minus.amount().isEmpty() || plus.amount().isEmpty()
                ? Optional.empty()
                : Optional.of(isMinusLarger() ? "plus rail" : "minus rail");
    }

    private boolean isMinusLarger() {
        return si(minus) >= si(plus);
    }

    Term resistance(Limits limits) {
        Working lower = Working.fill(LOWER_RAIL)
                .named("isolation resistance, " + reading.id())
                .put(
                        "R_o",
                        car.evidence()
                                .measured(
                                        path("resistor"),
                                        "known resistor, " + reading.id(),
                                        "kΩ",
                                        reading.resistor(),
                                        reading.resistorInstrument(),
                                        reading.date()))
                .put("U_b", pack())
                .put("V_1'", withResistor())
                .put("V_1", larger())
                .put("V_2", smaller())
                .put("U_n", car.pack().nominalVoltage())
                .put("R_m", meter(limits))
                .work();
        return (lower.amount().isEmpty() ? Optional.<String>empty() : fault(lower))
                .<Term>map(why -> new Absent(path(""), "isolation resistance, " + reading.id(), Unit.of("kΩ"), why))
                .orElse(lower);
    }

    /** What an isolation monitor would show: it sees both rails at once. */
    Working parallel(Limits limits) {
        return Working.fill(PARALLEL)
                .named("both rails in parallel, " + reading.id())
                .put("R_m", meter(limits))
                .put("U_b", pack())
                .put("V_1", larger())
                .put("V_2", smaller())
                .work();
    }

    /** Readings no circuit of two leaking rails can give. */
    private Optional<String> fault(Working lower) {
        if (si(withResistor()) > LEAST_CHANGE * si(larger())) {
            return Optional.of("the resistor hardly changes the reading; use a smaller one");
        }
        Working parallel = Working.fill(PARALLEL)
                .put("R_m", plainMeter())
                .put("U_b", pack())
                .put("V_1", larger())
                .put("V_2", smaller())
                .work();
        return parallel.amount().isPresent() && contradicts(parallel, lower)
                ? Optional.of("what the meter draws does not fit the change by the resistor; read all four again")
                : Optional.empty();
    }

    /** Two rails of which none is below the lower one are together between its half and its whole. */
    private static boolean contradicts(Working parallel, Working lower) {
        var both = parallel.amount().orElseThrow();
        var one = lower.amount().orElseThrow();
        return both.si() - both.expanded() > one.si() + one.expanded()
                || both.si() + both.expanded() < (one.si() - one.expanded()) / 2;
    }

    private Term larger() {
        return lowerRail().isEmpty() ? minus : isMinusLarger() ? minus : plus;
    }

    private Term smaller() {
        return lowerRail().isEmpty() ? plus : isMinusLarger() ? plus : minus;
    }

    private Term pack() {
        return volts("pack-voltage", "voltage of the pack", reading.packVoltage());
    }

    private Term withResistor() {
        return volts("with-resistor", "larger reading with the resistor", reading.withResistor());
    }

    private Term plainMeter() {
        return car.evidence()
                .stated(
                        path("meter-resistance"),
                        "resistance of the voltmeter, " + reading.id(),
                        "MΩ",
                        reading.meterResistance(),
                        reading.by());
    }

    /** A meter below what the method asks may show a leak; it does not show that there is none. */
    private Term meter(Limits limits) {
        Term meter = plainMeter();
        Optional<Limit> least = limits.find("isolation-meter");
        if (least.isEmpty() || meter.amount().isEmpty()) {
            return meter;
        }
        for (String reservation : least.get().reservations()) {
            meter = Cases.doubted(meter, reservation);
        }
        return least.get().judge(meter) == Verdict.NOT_MET
                ? Cases.doubted(
                        meter,
                        "the voltmeter of " + reading.id() + " has " + reading.meterResistance()
                                + ", the method asks for at least "
                                + least.get().value())
                : meter;
    }

    private Term volts(String key, String name, @Nullable Quantity quantity) {
        return car.evidence()
                .measured(path(key), name + ", " + reading.id(), "V", quantity, reading.instrument(), reading.date());
    }

    private String path(String key) {
        return "readings.isolation[" + reading.id() + "]" + (key.isEmpty() ? "" : "." + key);
    }

    private static double si(Term term) {
        return term.amount().orElseThrow().si();
    }
}
