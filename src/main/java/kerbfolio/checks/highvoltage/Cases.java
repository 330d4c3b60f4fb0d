package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Known;
import kerbfolio.formula.Term;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** High-voltage parts as a hand meets them: a part inside another's case is met only when that is open. */
final class Cases {
    private Cases() {}

    static List<Part> exposed(Car car) {
        return car.job().parts().stream()
                .filter(Cases::isHighVoltage)
                .filter(part -> !isEnclosed(part, car))
                .toList();
    }

    private static boolean isHighVoltage(Part part) {
        Role role = part.role();
        return role != null && (role.ports() != Role.Ports.NONE || role == Role.MOTOR);
    }

    static boolean isEnclosed(Part part, Car car) {
        return car.job().parts().stream()
                .filter(host -> host.id().equals(part.inside()))
                .anyMatch(host -> host.enclosure() != null || isHighVoltage(host));
    }

    /** A check that finds nothing to look at says so: silence would read as if all were well. */
    static Stream<Finding> orAsk(List<Finding> findings, String path, String what, Limits limits, String key) {
        return findings.isEmpty()
                ? Stream.of(Finding.judged(what, Absent.unrecorded(path, what, "1"), limits, key))
                : findings.stream();
    }

    /** The term, held back by one more reason where there is one figure to hold back. */
    static Term doubted(Term term, String reservation) {
        return term instanceof Known known ? known.doubted(reservation) : term;
    }
}
