package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.Role.Ports;
import kerbfolio.source.Source;

/** A part may be made for the pack's nominal voltage and die of its full one, or sleep at its empty one. */
public final class VoltageWindow implements Check {
    static final Formula MARGIN = Formula.of("M = U_1 - U_2")
            .giving("voltage in hand", "V")
            .with("U_1", "what must not be lower", "V")
            .with("U_2", "what must not be higher", "V")
            .from(Source.CIRCUITS.clause("difference of two voltages"))
            .build();

    /** Boxes of cells and of busbars set no window, and a fuse is rated by its own figures. */
    private static final Set<Role> WITHOUT_WINDOW = EnumSet.of(Role.BATTERY, Role.JUNCTION_BOX, Role.FUSE);

    @Override
    public String question() {
        return "Does every part stand the pack when full, and work with it when empty?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        var findings = new ArrayList<Finding>();
        for (Part part : car.circuit().parts()) {
            Role role = part.role();
            if (role == null || WITHOUT_WINDOW.contains(role)) {
                continue;
            }
            Term highest = car.pack().highestVoltage();
            findings.add(finding(part.id() + ", pack full", car.nameplate(part).maxVoltage(), highest, limits));
            if (role.ports() == Ports.TWO_POLES) {
                Term lowest = car.pack().lowestVoltage();
                findings.add(finding(
                        part.id() + ", pack empty", lowest, car.nameplate(part).minVoltage(), limits));
            }
        }
        return Cases.orAsk(findings, "parts", "high-voltage parts", limits, "voltage-window");
    }

    private static Finding finding(String subject, Term upper, Term lower, Limits limits) {
        Working margin =
                Working.fill(MARGIN).put("U_1", upper).put("U_2", lower).work();
        return Finding.judged(subject, margin, limits, "voltage-window");
    }
}
