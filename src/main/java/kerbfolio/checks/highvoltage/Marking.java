package kerbfolio.checks.highvoltage;

import java.util.List;
import java.util.Optional;
import kerbfolio.car.Car;
import kerbfolio.car.Evidence;
import kerbfolio.formula.Absent;
import kerbfolio.formula.Term;
import kerbfolio.job.Label;
import kerbfolio.job.LabelKind;
import kerbfolio.quantity.Unit;

/** What somebody saw on a part or cable: a label by name and day goes before a photograph, which names nobody. */
final class Marking {
    private Marking() {}

    static Term seen(Car car, String id, LabelKind kind) {
        List<Label> labels = car.job().labels();
        String name = kind.toString().replace('-', ' ') + " on " + id;
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            if (label.on().equals(id) && label.shows() == kind) {
                return Evidence.observed("labels[" + i + "]", name, label.isThere(), label.by(), label.date());
            }
        }
        return photo(car, id)
                .<Term>map(path -> new Absent(
                        path, name, Unit.ONE, "there is a photo, and nobody is named who says what it shows"))
                .orElseGet(() -> Absent.unrecorded("labels[" + id + "]", name, "1"));
    }

    private static Optional<String> photo(Car car, String id) {
        for (int i = 0; i < car.job().photos().size(); i++) {
            if (id.equals(car.job().photos().get(i).subject())) {
                return Optional.of("photos[" + i + "]");
            }
        }
        return Optional.empty();
    }
}
