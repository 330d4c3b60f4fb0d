package kerbfolio.procedure;

import java.util.ArrayList;
import java.util.List;
import kerbfolio.car.Car;
import kerbfolio.car.LiveParts;
import kerbfolio.formula.Term;
import kerbfolio.job.Part;
import kerbfolio.job.Role;
import kerbfolio.job.TestPoint;
import org.jspecify.annotations.Nullable;

/**
 * Proving dead: a tester that is proved before and after, each point pole to pole and each pole to the chassis.
 *
 * @param car the car
 * @param limit the voltage that counts as dead
 * @param low the same in words
 */
record Proof(Car car, Term limit, String low) {
    private static final String NOT_DEAD =
            "A reading above that, or none at all: NOT DEAD. Close the cover, step back, find out why, begin again.";

    List<Step> steps() {
        var steps = new ArrayList<Step>();
        String rated = "two-pole voltage tester or voltmeter for direct current, rated for more than "
                + Said.volts(car.pack().highestVoltage()).replace("not known", "the voltage of the pack")
                + ", leads with guarded tips";
        steps.add(Step.of(
                        "Prove the tester on a source of more than " + low + " of direct current.",
                        List.of(),
                        "A dead tester shows a dead car.",
                        Step.blank("it reads"))
                .with(rated));
        List<Part> points = points();
        points.forEach(part -> steps.add(at(part, part.testPoint()).showing(car.job(), List.of(part))));
        if (points.isEmpty()) {
            steps.add(measured(
                    "Open the cover of the test point and measure.",
                    List.of("test point, its cover and its equipment: " + Said.CONSULT),
                    "gloves and face shield on"));
        }
        List<Part> inverters = car.job().parts().stream()
                .filter(part -> part.role() == Role.INVERTER && part.testPoint() == null)
                .toList();
        for (Part inverter : inverters) {
            steps.add(measured(
                            "Measure at the terminals of " + Said.part(inverter) + ".",
                            List.of("cover and how to reach them: " + Said.CONSULT),
                            "gloves and face shield on")
                    .showing(car.job(), List.of(inverter)));
        }
        steps.add(Step.of(
                "Prove the tester again, on the same source.",
                List.of(),
                "If it fails now, nothing was proved: NOT DEAD. Begin again with another tester.",
                Step.blank("it reads")));
        steps.add(Step.of(
                "Lock and tag.",
                List.of("A lock or a cover on the socket of each disconnect, a tag with name and day on it and on the"
                        + " steering wheel."),
                "Whoever put the tag there takes it off, nobody else.",
                Step.blank("lock no.")));
        steps.add(Step.of(
                "Sign.",
                List.of(),
                "Dead is what was measured, for as long as everything stays out. What the list calls always live stays live.",
                Step.blank("signature"),
                Step.blank("day, time")));
        return List.copyOf(steps);
    }

    /** Test points of parts that can be dead: what keeps its voltage whatever is opened proves nothing. */
    List<Part> points() {
        LiveParts live = car.madeDead();
        return car.job().parts().stream()
                .filter(part -> part.testPoint() != null && !live.staysLive(part, limit))
                .toList();
    }

    private Step at(Part part, @Nullable TestPoint point) {
        var how = new ArrayList<String>();
        if (point != null) {
            how.add("Cover: " + Said.or(point.cover()) + ".");
            how.add("Under it: "
                    + (point.protection() == null
                            ? "nothing guards the live parts, as far as recorded"
                            : point.protection())
                    + ".");
            how.add("Probes on: " + point.name() + ".");
            if (point.seriesResistance() != null) {
                how.add("Each socket holds " + point.seriesResistance()
                        + " in series: a meter of low resistance reads too little.");
            }
        }
        return measured(
                "Open the test point at " + Said.part(part) + " and measure.",
                how,
                point == null ? Said.CONSULT : "protective equipment: " + Said.or(point.equipment()));
    }

    private Step measured(String what, List<String> how, String with) {
        String bound = "at most " + low;
        return Step.of(
                        what,
                        how,
                        "This is the live step: until the readings are taken, what lies under the cover counts as live. "
                                + NOT_DEAD,
                        new Step.Blank("+ to \u2212", bound),
                        new Step.Blank("+ to chassis", bound),
                        new Step.Blank("\u2212 to chassis", bound))
                .with(with)
                .live();
    }
}
