package kerbfolio.checks.highvoltage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.BondingReading;
import kerbfolio.job.Enclosure;
import kerbfolio.job.Gate;
import kerbfolio.job.Part;
import kerbfolio.job.Readings;
import kerbfolio.job.Role;
import kerbfolio.quantity.Unit;
import kerbfolio.source.Source;

/** Two cases at two potentials are what a hand on each completes: each must be held to the chassis. */
@Sheet(Sheets.TOUCH)
public final class Bonding implements Check {
    static final Formula RESISTANCE = Formula.of("R = U/I")
            .giving("resistance to the chassis", "Ω")
            .with("U", "voltage along it", "V")
            .with("I", "test current", "A")
            .with("I_min", "least test current", "A")
            .needs("I >= I_min")
            .from(Source.UN_R100.clause("5.1.2.2"))
            .build();

    @Override
    public String question() {
        return "Is every conductive case, and the earth pin of the inlet, bonded to the chassis?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Term least = limits.term("bonding-current", "A");
        var findings = new ArrayList<Finding>();
        for (Part part : Cases.exposed(car)) {
            if (part.role() == Role.INLET) {
                findings.add(finding(part.id() + ", earth pin", worst(part, car, least), limits));
            } else {
                Enclosure enclosure = part.enclosure();
                Boolean conductive = enclosure == null ? null : enclosure.conductive();
                if (conductive == null) {
                    String path = "parts[" + part.id() + "].enclosure.conductive";
                    Term unknown = Absent.unrecorded(path, "whether the case of " + part.title() + " conducts", "Ω");
                    findings.add(finding(part.id(), unknown, limits));
                } else if (conductive) {
                    findings.add(finding(part.id(), worst(part, car, least), limits));
                }
            }
        }
        return Cases.orAsk(findings, "parts", "high-voltage parts", limits, "bonding");
    }

    private static Finding finding(String subject, Term resistance, Limits limits) {
        return Finding.judged(subject, resistance, limits, "bonding");
    }

    /** The highest of several readings counts; one that cannot be used only where there is no other. */
    private static Term worst(Part part, Car car, Term least) {
        Readings readings = car.job().readings();
        List<BondingReading> all = readings == null ? List.of() : readings.bonding();
        List<Term> ofPart = IntStream.range(0, all.size())
                .filter(i -> all.get(i).of().equals(part.id()))
                .mapToObj(i -> resistance("readings.bonding[" + i + "]", all.get(i), car, least))
                .toList();
        return ofPart.stream()
                .filter(term -> term.amount().isPresent())
                .max(Comparator.comparingDouble(
                        term -> term.amount().orElseThrow().si()
                                + term.amount().orElseThrow().expanded()))
                .or(() -> ofPart.stream().findFirst())
                .orElseGet(
                        () -> Absent.unrecorded("readings.bonding[" + part.id() + "]", "bonding of " + part.id(), "Ω"));
    }

    private static Term resistance(String path, BondingReading reading, Car car, Term least) {
        String at = reading.point() == null ? reading.of() : reading.of() + ", " + reading.point();
        Term voltage = car.evidence()
                .measured(
                        path + ".voltage",
                        "voltage along the bond of " + at,
                        "V",
                        reading.voltage(),
                        reading.instrument(),
                        reading.date());
        Term current = car.evidence()
                .measured(
                        path + ".current",
                        "test current through " + at,
                        "A",
                        reading.current(),
                        reading.currentInstrument(),
                        reading.date());
        if (reading.current() != null
                && current.amount().isPresent()
                && least.amount().isPresent()
                && reading.current().si() < least.amount().get().si()) {
            return new Absent(
                    path + ".current",
                    "bonding of " + at,
                    Unit.of("Ω"),
                    "test current too low: " + reading.current() + " where at least "
                            + least.amount().get().si() + " A is asked");
        }
        return Working.fill(RESISTANCE)
                .named("resistance to the chassis of " + at)
                .put("U", voltage)
                .put("I", current)
                .put("I_min", least)
                .work();
    }
}
