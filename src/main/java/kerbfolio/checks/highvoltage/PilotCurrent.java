package kerbfolio.checks.highvoltage;

import java.util.Optional;
import java.util.stream.Stream;
import kerbfolio.car.Car;
import kerbfolio.car.Charging;
import kerbfolio.check.Check;
import kerbfolio.check.Finding;
import kerbfolio.check.Limits;
import kerbfolio.check.Sheet;
import kerbfolio.formula.Formula;
import kerbfolio.formula.Working;
import kerbfolio.job.Gate;
import kerbfolio.source.Source;

/** A charge lead burns if the pilot signal promises more than it carries. */
@Sheet(Sheets.BATTERY)
public final class PilotCurrent implements Check {
    static final Formula MARGIN = Formula.of("M = I_r - I_p")
            .giving("current in hand", "A")
            .with("I_r", "rated current of the charge lead", "A")
            .with("I_p", "current the pilot signal allows", "A")
            .from(Source.IEC_61851.clause("Annex A, duty of the pilot signal (clause from memory)"))
            .build();

    @Override
    public String question() {
        return "Does the charge lead carry the current the pilot signal allows?";
    }

    @Override
    public Optional<Gate> gate() {
        return Optional.of(Gate.INSPECTION);
    }

    @Override
    public Stream<Finding> examine(Car car, Limits limits) {
        Charging charging = car.charging();
        Working margin = Working.fill(MARGIN)
                .put("I_r", charging.leadCurrent())
                .put("I_p", charging.pilotCurrent())
                .work();
        return Stream.of(Finding.judged("charge lead", margin, limits, "pilot-current"));
    }
}
