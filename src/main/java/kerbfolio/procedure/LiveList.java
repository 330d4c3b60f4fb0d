package kerbfolio.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import kerbfolio.car.Car;
import kerbfolio.car.LiveParts;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.check.Verdict;
import kerbfolio.formula.Term;
import kerbfolio.job.ChargerRatings;
import kerbfolio.job.Motor;
import kerbfolio.job.MotorKind;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** Everything that may stay above the low voltage once all service disconnects are out, part by part. */
final class LiveList {
    private static final String POLES = "pole and pole";

    private final Car car;
    private final Optional<Limit> low;
    private final List<Live> list = new ArrayList<>();

    private LiveList(Car car, Limits limits) {
        this.car = car;
        this.low = limits.find("low-voltage");
    }

    static List<Live> of(Car car, Limits limits) {
        var list = new LiveList(car, limits);
        if (car.circuit().isRecorded()) {
            LiveParts live = car.liveParts(
                    car.circuit().disconnects().stream().map(Part::id).toList());
            list.cells(live);
            list.sockets();
            list.capacitors(live);
            list.consumers(live);
        }
        return List.copyOf(list.list);
    }

    /** Whatever is not known, or not clearly low, may be live. */
    private boolean mayBeLive(Term term) {
        return low.map(limit -> limit.judge(term))
                .filter(verdict -> verdict == Verdict.MET || verdict == Verdict.MET_UNCONFIRMED)
                .isEmpty();
    }

    private void add(String what, String between, Term volts, String why) {
        if (mayBeLive(volts)) {
            list.add(new Live(what, between, Said.volts(volts), why));
        }
    }

    private void cells(LiveParts live) {
        for (LiveParts.Half half : live.halves()) {
            String boxes = Said.parts(half.boxes());
            for (Part box : half.boxes()) {
                add(Said.part(box), POLES, car.pack().boxVoltage(box.id()), "always: cells cannot be switched off");
            }
            if (half.boxes().size() > 1) {
                add("half-pack: " + boxes, "its two ends", half.volts(), "always: these boxes stay joined");
            }
            if (!half.touching().isEmpty()) {
                add(
                        Said.parts(half.touching()),
                        "one of its terminals and a pole of " + boxes,
                        half.volts(),
                        "always: one terminal stays joined to " + boxes);
            }
        }
    }

    /** An open disconnect holds what its own opening interrupts, whatever else is open. */
    private void sockets() {
        for (Part disconnect : car.circuit().disconnects()) {
            add(
                    "socket of " + Said.part(disconnect),
                    "its terminals",
                    car.liveParts(List.of(disconnect.id())).betweenTerminals(disconnect),
                    "always, once it is out: the other parts close the loop up to here");
        }
    }

    /** A capacitor nobody recorded may be there all the same; a bus the cells keep live never empties. */
    private void capacitors(LiveParts live) {
        List<String> out = car.circuit().disconnects().stream().map(Part::id).toList();
        car.circuit().buses(out).stream()
                .filter(bus -> !mayBeLive(live.betweenPoles(bus.parts().get(0))))
                .forEach(bus -> add(
                        Said.parts(bus.parts()),
                        POLES,
                        car.pack().highestVoltage(),
                        "until their capacitors have emptied: wait, then measure"));
    }

    private void consumers(LiveParts live) {
        for (Part part : car.circuit().parts()) {
            if (LiveParts.isConsumer(part)) {
                add(
                        Said.part(part),
                        POLES,
                        live.betweenPoles(part),
                        "always: no service disconnect parts it from the cells");
            }
        }
        for (Part part : car.job().parts()) {
            feedsBack(part);
            if (part.role() == Role.INLET) {
                inlet(part);
            }
            if (maySpin(part)) {
                turning(part);
            }
        }
    }

    private void feedsBack(Part part) {
        Boolean said = part.electrical() == null ? null : part.electrical().feedsBack();
        boolean isAsked = part.role() == Role.CONVERTER || part.role() == Role.CHARGER;
        if (Boolean.TRUE.equals(said) || (said == null && isAsked)) {
            add(
                    Said.part(part),
                    POLES,
                    car.pack().highestVoltage(),
                    (said == null ? "nobody says that it cannot bring voltage back" : "it can bring voltage back")
                            + (part.role() == Role.CHARGER ? ": while a charge lead is in" : ": while it has 12 V"));
        }
    }

    private void inlet(Part part) {
        String mains = car.job().parts().stream()
                .map(Part::charger)
                .filter(Objects::nonNull)
                .map(ChargerRatings::inputVoltage)
                .filter(Objects::nonNull)
                .findFirst()
                .map(volts -> volts + " mains")
                .orElse("mains");
        boolean isDirect = car.circuit().part(part.id()).isPresent();
        list.add(new Live(
                Said.part(part) + " and its cable to the charger",
                "its pins, and pin and chassis",
                isDirect ? Said.volts(car.pack().highestVoltage()) : mains,
                "while a charge lead is in"));
    }

    static boolean isMotor(Part part) {
        return part.motor() != null || part.role() == Role.DRIVE_UNIT || part.role() == Role.MOTOR;
    }

    /** A motor with magnets makes voltage when it is turned; one of unknown kind is taken for one. */
    static boolean maySpin(Part part) {
        Motor motor = part.motor();
        return isMotor(part) && (motor == null || motor.kind() == null || motor.kind() == MotorKind.MAGNET);
    }

    private void turning(Part part) {
        Motor motor = part.motor();
        String made = motor == null || motor.backVoltage() == null || motor.backVoltageAt() == null
                ? "not known"
                : motor.backVoltage() + " at " + motor.backVoltageAt();
        list.add(new Live(
                Said.part(part) + ", its cables and the inverter",
                "phase and phase, and the poles of the inverter",
                made,
                (motor == null || motor.kind() == null ? "kind of motor not recorded: " : "magnet motor: ")
                        + "while the motor or a driven wheel turns, more the faster"));
    }
}
