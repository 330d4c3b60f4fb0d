package kerbfolio.car;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;
import kerbfolio.car.Circuit.Bus;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.DecayPoint;
import kerbfolio.job.DecayReading;
import kerbfolio.job.Job;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/**
 * How long a bus that is left alone stays above a voltage: from its capacitors, and from every reading somebody took.
 *
 * @param bus the parts that discharge as one
 * @param computed from what the data sheets say
 * @param readings from two voltages read on it, each under a name of its own
 */
public record Discharge(Bus bus, Working computed, List<Reading> readings) {
    static final Formula TIME_CONSTANT = Formula.of("tau = (t_2 - t_1)/ln(U_1/U_2)")
            .giving("time constant as read", "s")
            .with("t_1", "time of the first reading", "s")
            .with("t_2", "time of the second reading", "s")
            .with("U_1", "first voltage", "V")
            .with("U_2", "second voltage", "V")
            .needs("U_2 > 0*[V]")
            .needs("U_1 > U_2")
            .needs("t_2 > t_1")
            .from(Source.CIRCUITS.clause("discharge of a capacitor through a resistance"))
            .build();

    static final Formula AS_READ = Formula.of("t = tau*max(ln(U_0/U_s), 0)")
            .giving("time until the bus is down to the limit, as read", "s")
            .with("tau", "time constant as read", "s")
            .with("U_0", "highest working voltage", "V")
            .with("U_s", "voltage limit", "V")
            .needs("U_0 > 0*[V]")
            .needs("U_s > 0*[V]")
            .from(Source.CIRCUITS.clause("discharge of a capacitor through a resistance"))
            .build();

    /**
     * A decay somebody read.
     *
     * @param name its own, in shop words
     * @param of id of the part it was read on
     * @param time to the limit from the highest working voltage
     */
    public record Reading(String name, String of, Term time) {}

    /**
     * The buses to wait for once the disconnects are out: with every contactor open, and with every contactor welded
     * closed; each once. Without a link nothing is known of what discharges together.
     */
    static List<Bus> buses(Circuit circuit) {
        if (!circuit.isRecorded()) {
            return List.of();
        }
        List<String> disconnects = circuit.disconnects().stream().map(Part::id).toList();
        List<String> all = Stream.concat(
                        disconnects.stream(), circuit.contactors().stream().map(Part::id))
                .toList();
        var buses = new LinkedHashSet<>(circuit.buses(all));
        buses.addAll(circuit.buses(disconnects));
        return List.copyOf(buses);
    }

    /** What hangs together when the fuses are open too: one may have blown before the car came in. */
    static List<Bus> loose(Circuit circuit) {
        return circuit.buses(Stream.of(circuit.disconnects(), circuit.contactors(), circuit.parts(Role.FUSE))
                .flatMap(List::stream)
                .map(Part::id)
                .toList());
    }

    /** Every reading of the job, whether its part is on a bus or not. */
    static List<Reading> readings(Job job, Evidence evidence, Term from, Term to) {
        var list = new ArrayList<Reading>();
        List<DecayReading> decays =
                job.readings() == null ? List.of() : job.readings().decay();
        for (int i = 0; i < decays.size(); i++) {
            DecayReading decay = decays.get(i);
            String name = "reading " + (i + 1) + ", at " + decay.of();
            list.add(
                    new Reading(name, decay.of(), time(name, "readings.decay[" + i + "].", decay, evidence, from, to)));
        }
        return List.copyOf(list);
    }

    /** Only a bus nobody discharged on purpose shows what it does by itself. */
    private static Term time(String name, String path, DecayReading decay, Evidence evidence, Term from, Term to) {
        if (decay.active() == null) {
            return Absent.unrecorded(path + "active", "whether something discharged the bus on purpose, " + name, "s");
        }
        if (decay.active()) {
            return new Absent(
                    path + "active",
                    "decay by itself, " + name,
                    Unit.of("s"),
                    "something discharged the bus on purpose, which is never counted on");
        }
        Working constant = Working.fill(TIME_CONSTANT)
                .named("time constant, " + name)
                .put("t_1", instant(evidence, path + "first", name, decay, decay.first()))
                .put("t_2", instant(evidence, path + "second", name, decay, decay.second()))
                .put("U_1", voltage(evidence, path + "first", name, decay, decay.first()))
                .put("U_2", voltage(evidence, path + "second", name, decay, decay.second()))
                .work();
        return Working.fill(AS_READ)
                .named("decay by " + name)
                .put("tau", constant)
                .put("U_0", from)
                .put("U_s", to)
                .work();
    }

    private static Term instant(
            Evidence evidence, String path, String name, DecayReading decay, @Nullable DecayPoint point) {
        return evidence.measured(
                path + ".time",
                last(path) + " time, " + name,
                "s",
                point == null ? null : point.time(),
                decay.timeInstrument(),
                decay.date());
    }

    private static Term voltage(
            Evidence evidence, String path, String name, DecayReading decay, @Nullable DecayPoint point) {
        return evidence.measured(
                path + ".voltage",
                last(path) + " voltage, " + name,
                "V",
                point == null ? null : point.voltage(),
                decay.instrument(),
                decay.date());
    }

    private static String last(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }
}
