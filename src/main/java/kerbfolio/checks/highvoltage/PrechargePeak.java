package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Filling;
import kerbfolio.car.Nameplate;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Term;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** The contactor of the pre-charge closes on the whole voltage of the pack. */
public final class PrechargePeak implements Check {
    static final Formula PEAK = Formula.of("I = U/R")
            .giving("first current of a filling", "A")
            .with("U", "highest working voltage", "V")
            .with("R", "resistance of the pre-charge resistor", "Ω")
            .needs("R > 0*[Ω]")
            .from(Source.CIRCUITS.clause("law of Ohm"))
            .build();

    static final Formula USE = Formula.of("u = I/I_c")
            .giving("first current over the rating of the contactor", "%")
            .with("I", "first current of a filling", "A")
            .with("I_c", "current the contactor carries", "A")
            .needs("I_c > 0*[A]")
            .from(Source.CIRCUITS.clause("law of Ohm"))
            .build();

    @Override
    public String question() {
        return "Does the contactor of the pre-charge bear the first current of a filling?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.ENERGISE);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Filling filling = car.filling();
        Working peak = Working.fill(PEAK)
                .put("U", car.pack().highestVoltage())
                .put("R", filling.resistance())
                .work();
        return filling.contactors().isEmpty()
                ? Stream.of(finding("contactor of the pre-charge", peak, unfound(), limits))
                : filling.contactors().stream()
                        .map(part -> finding(part.id(), peak, rating(car.nameplate(part)), limits));
    }

    private static Finding finding(String subject, Working peak, Term rating, Limits limits) {
        return Finding.judged(
                subject, Working.fill(USE).put("I", peak).put("I_c", rating).work(), limits, "precharge-peak");
    }

    /** What it carries for a short time, and where that is not recorded what it carries without end, which is less. */
    private static Term rating(Nameplate plate) {
        return plate.peakCurrent().amount().isPresent() ? plate.peakCurrent() : plate.continuousCurrent();
    }

    private static Term unfound() {
        return Absent.unrecorded("links", "which contactor lets the pre-charge resistor fill the bus", "A");
    }
}
