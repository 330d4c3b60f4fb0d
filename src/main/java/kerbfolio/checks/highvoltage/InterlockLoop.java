package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Connector;
import kerbfolio.job.Gate;
import kerbfolio.job.Link;
import kerbfolio.job.LinkKind;
import kerbfolio.job.Opening;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** A connector the loop does not pass is pulled under load, and the pack never hears of it. */
@Sheet(Sheets.TOUCH)
public final class InterlockLoop implements Check {
    private static final Term UNRECORDED = Absent.unrecorded("links[interlock]", "interlock loop", "1");

    @Override
    public String question() {
        return "Does an interlock loop pass every high-voltage connector that parts by hand?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        List<Link> loops = car.job().links().stream()
                .filter(link -> link.kind() == LinkKind.INTERLOCK)
                .toList();
        var findings = new ArrayList<Finding>();
        findings.add(finding(
                "interlock loop", loops.isEmpty() ? UNRECORDED : count("links", "interlock loops", loops, ""), limits));
        for (Part part : Cases.exposed(car)) {
            if (part.role() == Role.INLET) {
                continue; // the control pilot of the charge lead watches it
            }
            if (part.role() == Role.DISCONNECT && part.connectors().isEmpty()) {
                findings.add(finding(part.id(), passing("parts[" + part.id() + "]", part.id(), loops), limits));
            }
            for (Connector connector : part.connectors()) {
                if (part.role() == Role.DISCONNECT || connector.opensWith() != Opening.TOOL) {
                    String path = "parts[" + part.id() + "].connectors[" + connector.id() + "]";
                    findings.add(finding(connector.id(), connected(path, connector, loops), limits));
                }
            }
        }
        return findings.stream();
    }

    private static Term connected(String path, Connector connector, List<Link> loops) {
        Term passing = passing(path, connector.id(), loops);
        boolean isPassed = passing.amount().filter(amount -> amount.si() > 0).isPresent();
        return connector.opensWith() == null && !isPassed
                ? Absent.unrecorded(path + ".opens-with", "what it takes to part " + connector.id(), "1")
                : passing;
    }

    private static Term passing(String path, String id, List<Link> loops) {
        List<Link> passing =
                loops.stream().filter(loop -> loop.through().contains(id)).toList();
        return loops.isEmpty()
                ? UNRECORDED
                : count(path, "interlock loops through " + id, passing, "no recorded loop passes it");
    }

    private static Term count(String path, String name, List<Link> loops, String none) {
        String ids = String.join(", ", loops.stream().map(Link::id).toList());
        return Evidence.solved(path, name, loops.size(), "1", loops.isEmpty() ? none : ids);
    }

    private static Finding finding(String subject, Term loops, Limits limits) {
        return Finding.judged(subject, loops, limits, "interlock-loop");
    }
}
