package kerbfolio.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import kerbfolio.car.Car;
import kerbfolio.car.Conductor;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.CurvePoint;
import kerbfolio.job.Part;
import kerbfolio.quantity.Amount;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** A fuse with its curve, the time it needs for a short circuit and the smallest cable it guards. */
record MeltingCurve(
        String name, List<MeltingCurve.Point> points, Value melting, Optional<MeltingCurve.Withstand> cable) {
    /** A point of a fuse's curve. */
    record Point(Value current, Value time) {}

    /** What a cable withstands. */
    record Withstand(String id, Value area, Value factor) {
        String heat() {
            return factor.text() + " times " + area.text();
        }

        double root() {
            return factor.si() * area.si();
        }
    }

    static MeltingCurve of(Dossier dossier, Part fuse) {
        Car car = dossier.car();
        List<CurvePoint> written = fuse.fuse() == null ? List.of() : fuse.fuse().curve();
        List<Point> points = IntStream.range(0, written.size())
                .mapToObj(i -> new Point(
                        point(dossier, fuse, i, "current", "A", written.get(i).current()),
                        point(dossier, fuse, i, "time", "s", written.get(i).time())))
                .filter(point -> point.current().si() > 0 && point.time().si() > 0)
                .sorted(Comparator.comparingDouble(point -> point.current().si()))
                .toList();
        return new MeltingCurve(
                fuse.title(),
                points,
                Value.of(car.fuse(fuse).meltingTime(car.prospectiveCurrent()), dossier.units()),
                least(dossier, fuse));
    }

    private static Value point(
            Dossier dossier, Part fuse, int index, String key, String unit, @Nullable Quantity quantity) {
        return Value.of(
                dossier.car()
                        .evidence()
                        .stated(
                                "parts[" + fuse.id() + "].fuse.curve[" + index + "]." + key,
                                key + " on the curve of " + fuse.title(),
                                unit,
                                quantity,
                                fuse.fuse() == null ? null : fuse.fuse().from()),
                dossier.units());
    }

    /** The cable that withstands least of those whose smallest fuse this is. */
    private static Optional<Withstand> least(Dossier dossier, Part fuse) {
        Car car = dossier.car();
        return car.circuit().links().stream()
                .filter(link -> link.kind().isCable())
                .filter(link -> car.guards().of(link).stream()
                        .flatMap(guard -> guard.ways().stream())
                        .flatMap(way ->
                                way.fuses().stream()
                                        .min(Comparator.comparingDouble(each -> rating(car, each)))
                                        .stream())
                        .anyMatch(fuse::equals))
                .map(car::conductor)
                .map(conductor -> withstand(dossier, conductor))
                .filter(cable -> cable.root() > 0)
                .min(Comparator.comparingDouble(Withstand::root));
    }

    private static double rating(Car car, Part fuse) {
        return car.fuse(fuse).current().amount().map(Amount::si).orElse(Double.MAX_VALUE);
    }

    private static Withstand withstand(Dossier dossier, Conductor conductor) {
        return new Withstand(
                conductor.link().id(),
                Value.of(conductor.area(), dossier.units()),
                Value.of(conductor.withstand(), dossier.units()));
    }

    String words() {
        return name + ": melts at "
                + points.stream()
                        .map(point ->
                                point.current().text() + " in " + point.time().text())
                        .collect(Collectors.joining(", "))
                + (melting.isKnown() ? "; by a short circuit in " + melting.text() : "")
                + cable.map(least -> "; smallest cable it guards: " + least.id())
                        .orElse("");
    }
}
