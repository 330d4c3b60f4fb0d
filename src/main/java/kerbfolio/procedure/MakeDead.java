package kerbfolio.procedure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import kerbfolio.car.Car;
import kerbfolio.car.Circuit;
import kerbfolio.car.Wait;
import kerbfolio.check.Limit;
import kerbfolio.check.Limits;
import kerbfolio.formula.Term;
import kerbfolio.job.Motor;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/**
 * Making the car dead: what to do in which order, and what may stay live all the same.
 *
 * @param isDerived whether a circuit is recorded; without one this is a blank form
 * @param heading what it is derived from
 * @param steps in order
 * @param live what may stay live once all service disconnects are out
 * @param touched all that a hand goes to before the car is proved dead
 * @param low the voltage that counts as dead, with who says so
 * @param cautions before anything is touched
 */
public record MakeDead(
        boolean isDerived,
        String heading,
        List<Step> steps,
        List<Live> live,
        List<String> touched,
        String low,
        List<String> cautions) {
    private static final String WALK_ROUND = "walk-round: not recorded";

    private static final List<String> CAUTIONS = List.of(
            "Traction voltage kills. Only people trained and allowed to where they are do this work; local codes and"
                    + " licensed people decide. Never alone: somebody who can switch off and call for help stands by.",
            "The boxes of cells stay live whatever is done here. Nobody opens a box by this page.",
            "This page knows only what somebody wrote down. Look all round before the first step: a cable that is not"
                    + " on this page is live.");

    /** Derives the procedure from the recorded links; without any it is the same form with its blanks empty. */
    public static MakeDead of(Car car, Limits limits) {
        Circuit circuit = car.circuit();
        boolean isDerived = circuit.isRecorded();
        int links = circuit.links().size();
        Optional<Limit> limit = limits.find("low-voltage");
        String low = limit.map(l -> l.value().toString()).orElse("the low voltage (" + Said.CONSULT + ")");
        var steps = new ArrayList<Step>();
        steps.addAll(switchedOff(car));
        steps.addAll(opened(car));
        Wait wait = car.waitFor(limits.term("low-voltage", "V"));
        steps.add(Step.of(
                "Wait " + wait.minutes() + " minutes.",
                List.of("Decided by: " + wait.reason() + "."),
                "Capacitors empty by themselves in this time, if nothing in them is broken. The wait is not the"
                        + " proof; the reading is.",
                Step.blank("out at"),
                Step.blank("wait over at")));
        Proof proof = new Proof(car, limits.term("low-voltage", "V"), low);
        steps.addAll(proof.steps());
        return new MakeDead(
                isDerived,
                (isDerived
                                ? "Derived from " + links + (links == 1 ? " recorded link; " : " recorded links; ")
                                : "Not derived: no link of the traction circuit is recorded. Blank form; ")
                        + WALK_ROUND,
                List.copyOf(steps),
                LiveList.of(car, limits),
                touched(car, proof.points()),
                limit.map(l -> l.value() + ": " + l.meaning() + ", " + l.origin())
                        .orElse(Said.CONSULT),
                CAUTIONS);
    }

    private static List<String> touched(Car car, List<Part> points) {
        var touched = new ArrayList<>(List.of("the charge lead", "the key", "the minus clamp of the 12 V battery"));
        touched.add(orAny(car.circuit().disconnects(), "the service disconnect"));
        touched.add("the cover of the test point at "
                + orAny(
                        car.job().parts().stream()
                                .filter(part -> points.contains(part) || part.role() == Role.INVERTER)
                                .toList(),
                        "the place you have consulted on"));
        return List.copyOf(touched);
    }

    private static String orAny(List<Part> parts, String otherwise) {
        return parts.isEmpty() ? otherwise : Said.parts(parts);
    }

    private static List<Step> switchedOff(Car car) {
        var steps = new ArrayList<Step>();
        steps.add(Step.of(
                        "Pull out the charge lead.",
                        named(car, Role.INLET, "inlet"),
                        "While a lead is in, inlet and charger are live and contactors may close by themselves. Tag the"
                                + " inlet.")
                .showing(car.job(), of(car, Role.INLET)));
        steps.add(Step.of(
                "Switch off. Take the key out and keep it on you.",
                List.of("A key that works without contact goes where the car cannot feel it."),
                "Whoever has a key can close the contactors.",
                Step.blank("key kept by")));
        steps.add(Step.of(
                        "Take the minus clamp off the 12 V battery and insulate it.",
                        named(car, Role.AUXILIARY_BATTERY, "12 V battery"),
                        "Contactors lose their hold and converters stop. The clamp must not spring back.")
                .with("insulating cap or tape")
                .showing(car.job(), of(car, Role.AUXILIARY_BATTERY)));
        List<Part> motors = car.job().parts().stream().filter(LiveList::isMotor).toList();
        if (motors.isEmpty() || motors.stream().anyMatch(LiveList::maySpin)) {
            steps.add(Step.of(
                            "Hold the wheels.",
                            motors.isEmpty()
                                    ? List.of("motor: " + Said.CONSULT)
                                    : motors.stream().map(MakeDead::kind).toList(),
                            "A magnet motor that turns makes voltage by itself, with everything switched off. Do not push,"
                                    + " tow or turn the car or a driven wheel until the work is done.")
                    .with("chocks on both sides of a driven wheel, parking brake"));
        }
        return steps;
    }

    private static String kind(Part part) {
        Motor motor = part.motor();
        return Said.part(part) + ": "
                + (motor == null || motor.kind() == null
                        ? "kind of motor not recorded, taken for one with magnets"
                        : motor.kind() + " motor");
    }

    private static List<Part> of(Car car, Role role) {
        return car.job().parts().stream().filter(part -> part.role() == role).toList();
    }

    private static List<String> named(Car car, Role role, String what) {
        List<String> named = of(car, role).stream().map(Said::part).toList();
        return named.isEmpty() ? List.of(what + ": " + Said.CONSULT) : named;
    }

    private static List<Step> opened(Car car) {
        var steps = new ArrayList<Step>();
        steps.add(Step.of(
                        "Put on gloves and face shield.",
                        List.of(Gloves.words(car), Gloves.RETEST),
                        "Look the gloves over and hold air in them before each use: a glove that leaks is thrown away.",
                        Step.blank("gloves tested on"))
                .with("gloves, leather gloves over them, face shield, insulating mat; no metal on hands or neck"));
        for (Part disconnect : car.circuit().disconnects()) {
            Term gap = car.liveParts(List.of(disconnect.id())).betweenTerminals(disconnect);
            steps.add(out(Said.part(disconnect), opening(disconnect), Said.volts(gap), Step.blank("kept by"))
                    .showing(car.job(), List.of(disconnect)));
        }
        if (car.circuit().disconnects().isEmpty()) {
            steps.add(out(
                    "the service disconnect",
                    List.of("service disconnect and its place: " + Said.CONSULT + "; without one do not go on"),
                    "not known",
                    Step.blank("which, where"),
                    Step.blank("kept by")));
        }
        return steps;
    }

    private static Step out(String what, List<String> how, String volts, Step.Blank... blanks) {
        return Step.of(
                        "Take out " + what + ", keep it on you, tag its place.",
                        how,
                        "Its socket stays live; highest voltage between its terminals: " + volts
                                + ". Cover it, never reach into it.",
                        blanks)
                .with("gloves on; tag")
                .live();
    }

    private static List<String> opening(Part disconnect) {
        return disconnect.connectors().stream()
                .filter(connector -> connector.opensWith() != null)
                .map(connector -> connector.id() + " opens by " + connector.opensWith()
                        + (Boolean.TRUE.equals(connector.locked()) ? ", after its lock is lifted" : ""))
                .toList();
    }
}
