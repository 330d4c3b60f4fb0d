package kerbfolio.figure;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.car.Bond;
import kerbfolio.car.Circuit;
import kerbfolio.car.LiveParts;
import kerbfolio.car.Potentials;
import kerbfolio.car.Terminal;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Part;
import kerbfolio.job.Role;

/** What may stay live with every service disconnect out and every contactor welded closed. */
final class StillLive {
    private final Dossier dossier;
    private final Potentials left;
    private final LiveParts parts;
    private final List<Part> out;

    StillLive(Dossier dossier) {
        this.dossier = dossier;
        Circuit circuit = dossier.car().circuit();
        out = circuit.disconnects();
        List<String> ids = out.stream().map(Part::id).toList();
        left = circuit.potentials(ids, dossier.car().pack().boxVolts());
        parts = dossier.car().liveParts(ids);
    }

    /** The disconnects counted as out, in words. */
    String out() {
        return out.isEmpty()
                ? "nothing opened, as no service disconnect is recorded,"
                : out.stream().map(Part::title).collect(Collectors.joining(", ")) + " out";
    }

    /** Whether a conductor still hangs on a box of cells. */
    boolean is(Bond conductor) {
        return !left.boxes(conductor.from()).isEmpty()
                || !left.boxes(conductor.to()).isEmpty();
    }

    /** What is left between the poles of a part; not known where the voltage of a box on the way is not. */
    Value between(Part part) {
        return Value.of(parts.betweenPoles(part), dossier.units());
    }

    /** Whether a part has more between its poles than the voltage class allows, or may have. */
    boolean isLive(Part part) {
        Value volts = between(part);
        return !volts.isKnown() || volts.si() > VoltageClass.of(dossier).si();
    }

    /** A word or two for a part: live with its voltage, poles that hang on a box, or nothing. */
    String word(Part part) {
        if (isLive(part)) {
            Value volts = between(part);
            return "live" + (volts.isKnown() ? " " + volts.text() : "");
        }
        long poles = Stream.of(Terminal.plus(part.id()), Terminal.minus(part.id()))
                .filter(pole -> !left.boxes(pole).isEmpty())
                .count();
        return poles == 0
                ? ""
                : part.role() == Role.BATTERY ? between(part).text() : poles == 1 ? "live pole" : "live poles";
    }
}
