package kerbfolio.checks.highvoltage;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Finding;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.IsolationMethod;
import kerbfolio.job.IsolationReading;
import kerbfolio.job.Pole;
import kerbfolio.job.Readings;
import kerbfolio.job.Role;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Sense;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;
import org.jspecify.annotations.Nullable;

/**
 * One isolation reading and what it comes to.
 *
 * @param reading as recorded
 * @param subject the reading, with the rail or pole it is of
 * @param resistance between the circuit and the chassis
 * @param key of the limit in force for what was joined
 */
record Isolation(IsolationReading reading, String subject, Term resistance, String key) {
    static final String DIRECT = "isolation-direct-current";
    static final String WITH_ALTERNATING = "isolation-with-alternating-current";

    static final Formula PER_VOLT = Formula.of("q = R_i/U")
            .giving("isolation resistance over the highest working voltage", "Ω/V")
            .with("R_i", "isolation resistance", "kΩ")
            .with("U", "highest working voltage", "V")
            .needs("U > 0*[V]")
            .from(Source.UN_R100.clause("5.1.3"))
            .build();

    /** Parts with an alternating-current side that the job does not show to be apart from the pack. */
    private static final Set<Role> ALTERNATING =
            EnumSet.of(Role.INVERTER, Role.DRIVE_UNIT, Role.MOTOR, Role.CHARGER, Role.COMPRESSOR);

    static List<Isolation> of(Car car, Limits limits) {
        return readings(car).stream().map(reading -> of(reading, car, limits)).toList();
    }

    private static List<IsolationReading> readings(Car car) {
        Readings readings = car.job().readings();
        return readings == null ? List.of() : readings.isolation();
    }

    private static Isolation of(IsolationReading reading, Car car, Limits limits) {
        String key = isDirect(reading, car) ? DIRECT : WITH_ALTERNATING;
        if (reading.method() == IsolationMethod.VOLTMETER) {
            var voltmeter = new VoltmeterIsolation(reading, car);
            String rail = voltmeter.lowerRail().map(lower -> ", " + lower).orElse("");
            return new Isolation(reading, reading.id() + rail, ifJoined(reading, voltmeter.resistance(limits)), key);
        }
        boolean isTester = reading.method() == IsolationMethod.TESTER;
        Term shown = isTester ? tested(reading, car) : displayed(reading, car, limits);
        String subject = reading.id() + (isTester ? pole(reading.pole()) : ", as the monitor shows");
        return new Isolation(reading, subject, ifJoined(reading, shown), key);
    }

    /** Whether nothing was joined that has an alternating-current side; what is not known may have one. */
    private static boolean isDirect(IsolationReading reading, Car car) {
        return reading.joined().stream()
                .allMatch(id -> car.job().parts().stream()
                        .anyMatch(part ->
                                part.id().equals(id) && part.role() != null && !ALTERNATING.contains(part.role())));
    }

    private static Term ifJoined(IsolationReading reading, Term resistance) {
        return reading.joined().isEmpty()
                ? absent(reading, "joined", "what was joined is not listed, so nothing is known to be isolated")
                : resistance;
    }

    private static String pole(@Nullable Pole pole) {
        return pole == null ? "" : pole == Pole.BOTH ? ", both poles" : ", " + pole + " pole";
    }

    /** A tester below the working voltage does not stress the insulation as the pack does. */
    private static Term tested(IsolationReading reading, Car car) {
        Quantity test = reading.testVoltage();
        Pole pole = reading.pole();
        if (test == null) {
            return Absent.unrecorded(path(reading, "test-voltage"), "voltage of the tester, " + reading.id(), "kΩ");
        }
        if (pole == null) {
            return Absent.unrecorded(path(reading, "pole"), "pole the tester was on, " + reading.id(), "kΩ");
        }
        var highest = car.pack().highestVoltage().amount();
        if (highest.isPresent()
                && (test.sense() == Sense.BELOW || test.si() < highest.get().si())) {
            return absent(
                    reading, "test-voltage", "tested with " + test + ", below the highest working voltage of the pack");
        }
        Term shown = shown(reading, car);
        boolean isOther = readings(car).stream()
                .anyMatch(other -> other.method() == IsolationMethod.TESTER
                        && other.pole() != null
                        && other.pole() != pole
                        && other.joined().containsAll(reading.joined()));
        return pole == Pole.BOTH || isOther
                ? shown
                : Cases.doubted(shown, "only the " + pole + " pole was tested, " + reading.id());
    }

    /** A display is never above the lower rail, so it may hold; that it works is what another instrument must show. */
    private static Term displayed(IsolationReading reading, Car car, Limits limits) {
        Term shown = shown(reading, car);
        boolean isBacked = readings(car).stream()
                .filter(other -> other.method() != IsolationMethod.MONITOR)
                .filter(other -> other.joined().containsAll(reading.joined()))
                .anyMatch(other -> of(other, car, limits).resistance().amount().isPresent());
        return isBacked
                ? shown
                : Cases.doubted(
                        shown, "no voltmeter or insulation tester bears out what the monitor shows in " + reading.id());
    }

    private static Term shown(IsolationReading reading, Car car) {
        return car.evidence()
                .measuredAtLeast(
                        path(reading, "resistance"),
                        "isolation resistance, " + reading.id(),
                        "MΩ",
                        reading.resistance(),
                        reading.instrument(),
                        reading.date());
    }

    /** A tester or monitor at the end of its scale says only that the resistance is above what it shows. */
    boolean isLowerBound() {
        return reading.method() != IsolationMethod.VOLTMETER && Evidence.isLowerBound(reading.resistance());
    }

    /** Judged by the limit for what was joined; a lower bound below the limit proves nothing. */
    Finding finding(Car car, Limits limits) {
        Working perVolt = Working.fill(PER_VOLT)
                .put("R_i", resistance)
                .put("U", car.pack().highestVoltage())
                .work();
        Optional<Limit> limit = limits.find(key);
        boolean provesNothing = isLowerBound()
                && limit.map(floor -> floor.judge(perVolt))
                        .filter(verdict -> verdict == Verdict.NOT_MET || verdict == Verdict.UNDECIDED)
                        .isPresent();
        Term result = provesNothing
                ? absent(
                        reading,
                        "resistance",
                        "reads " + reading.resistance() + ", which proves nothing against "
                                + limit.orElseThrow().value())
                : perVolt;
        return Finding.judged(subject, result, limits, key);
    }

    private static Absent absent(IsolationReading reading, String key, String why) {
        return new Absent(path(reading, key), "isolation resistance, " + reading.id(), Unit.of("kΩ"), why);
    }

    private static String path(IsolationReading reading, String key) {
        return "readings.isolation[" + reading.id() + "]." + key;
    }
}
