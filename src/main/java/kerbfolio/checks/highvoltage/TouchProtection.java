package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Connector;
import kerbfolio.job.Enclosure;
import kerbfolio.job.Gate;
import kerbfolio.job.Opening;
import kerbfolio.job.Part;
import kerbfolio.job.Place;
import kerbfolio.job.Role;
import org.jspecify.annotations.Nullable;

/** Where children and luggage are, not even a wire may reach what is live; elsewhere no finger. */
@Sheet(Sheets.TOUCH)
public final class TouchProtection implements Check {
    private static final String INSIDE = "touch-inside";
    private static final String ELSEWHERE = "touch-elsewhere";
    private static final String OPENED = "touch-opened";

    @Override
    public String question() {
        return "Is what is live out of reach, with cases closed or opened and connectors joined or parted?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public boolean isWaivable() {
        return false;
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var findings = new ArrayList<Finding>();
        for (Part part : Cases.exposed(car)) {
            findings.addAll(ofCase(part, car, limits));
            part.connectors().forEach(connector -> findings.addAll(ofConnector(part, connector, car, limits)));
        }
        return Cases.orAsk(findings, "parts", "high-voltage parts", limits, INSIDE);
    }

    /** Closed; and opened, unless that takes a tool. */
    private static List<Finding> ofCase(Part part, Car car, Limits limits) {
        String path = "parts[" + part.id() + "].enclosure";
        Enclosure enclosure = part.enclosure();
        Term access = Barrier.access(
                car,
                path + ".protection",
                "protection of the case of " + part.id(),
                enclosure == null ? null : enclosure.protection(),
                enclosure == null ? null : enclosure.from());
        Finding closed = closed(part, part.id() + ", closed", access, limits);
        if (enclosure != null && enclosure.opensWith() == Opening.TOOL) {
            return List.of(closed);
        }
        Term guards = Barrier.of(path, "the case of " + part.id(), enclosure).guards(car, whenOpened(part), limits);
        return List.of(closed, Finding.judged(part.id() + ", opened", guards, limits, OPENED));
    }

    /** Parted; and joined, where that is not met. */
    private static List<Finding> ofConnector(Part part, Connector connector, Car car, Limits limits) {
        String path = "parts[" + part.id() + "].connectors[" + connector.id() + "]";
        String name = "protection of " + connector.id() + " joined";
        Term access = Barrier.access(car, path + ".mated", name, connector.mated(), connector.from());
        Finding joined = closed(part, connector.id() + ", joined", access, limits);
        boolean isMet = joined.verdict() == Verdict.MET || joined.verdict() == Verdict.MET_UNCONFIRMED;
        Term guards = Barrier.of(path, connector).guards(car, whenOpened(part), limits);
        if (!isMet) {
            return List.of(joined, Finding.judged(connector.id(), guards, limits, OPENED));
        }
        for (String reservation : joined.reservations()) {
            guards = Cases.doubted(guards, reservation);
        }
        return List.of(Finding.judged(connector.id(), guards, limits, OPENED));
    }

    private static @Nullable Place place(Part part) {
        Enclosure enclosure = part.enclosure();
        return enclosure == null ? null : enclosure.place();
    }

    private static String key(Part part) {
        Place place = place(part);
        return place == null || place.isInside() ? INSIDE : ELSEWHERE;
    }

    /** A service disconnect may show a finger's guard once it is out, wherever it sits. */
    private static String whenOpened(Part part) {
        return part.role() == Role.DISCONNECT ? ELSEWHERE : key(part);
    }

    private static Finding closed(Part part, String subject, Term access, Limits limits) {
        Term judged = place(part) == null
                ? Absent.unrecorded("parts[" + part.id() + "].enclosure.place", "where " + part.id() + " sits", "1")
                : access;
        return Finding.judged(subject, judged, limits, key(part));
    }
}
