package kerbfolio.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.dossier.Dossier;
import kerbfolio.job.Enclosure;
import kerbfolio.job.Link;
import kerbfolio.job.LinkKind;
import kerbfolio.job.Part;
import kerbfolio.job.Position;
import kerbfolio.job.Role;
import kerbfolio.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Where each high-voltage part sits and how the cables run, as far as it is recorded. */
final class Whereabouts {
    private final Dossier dossier;
    private final List<Spot> spots = new ArrayList<>();
    private final List<Run> runs = new ArrayList<>();

    /** A place by its three figures; any may be unknown. */
    record Place(Value x, Value y, Value z) {
        /** As the legend writes it. */
        String words() {
            return Words.joined(", ", words("x", x), words("y", y), words("z", z));
        }

        private static String words(String axis, Value value) {
            return value.isKnown() ? axis + " " + value.text() : "";
        }
    }

    /**
     * A part that sits in no other.
     *
     * @param number what it is called on the drawing; 0 where its place is not known
     * @param zone its place in words; empty where none is written
     * @param inside parts in it
     */
    record Spot(Part part, int number, Place place, String zone, List<Part> inside) {
        boolean isDrawn() {
            return number > 0;
        }

        /** Service disconnects there. */
        List<String> cuts() {
            return Stream.concat(Stream.of(part), inside.stream())
                    .filter(each -> each.role() == Role.DISCONNECT)
                    .map(Part::title)
                    .toList();
        }

        String words() {
            String parts = inside.stream()
                    .map(each -> each.title() + (each.role() == Role.DISCONNECT ? " (cut here)" : ""))
                    .collect(Collectors.joining(", "));
            return part.title()
                    + (part.role() == Role.DISCONNECT ? " (cut here)" : "")
                    + (isDrawn() ? ", " + place.words() : zone.isEmpty() ? "" : ", " + zone)
                    + (parts.isEmpty() ? "" : "; in it: " + parts);
        }
    }

    /** Cables that run the same way. */
    record Run(List<Link> links, List<Place> points, boolean isRouted) {
        String names() {
            var names = new LinkedHashSet<String>();
            links.forEach(link -> names.add(Words.joined(" ", link.id(), link.size() == null ? "" : link.size())));
            return String.join(", ", names);
        }
    }

    Whereabouts(Dossier dossier) {
        this.dossier = dossier;
        int number = 1;
        for (Part part : dossier.car().job().parts()) {
            if (isHighVoltage(part) && container(part).equals(part)) {
                Place place = place("parts[" + part.id() + "]", part.title(), part.position());
                boolean isDrawn = place.x().isKnown();
                spots.add(new Spot(part, isDrawn ? number++ : 0, place, zone(part), inside(part)));
            }
        }
        collect();
    }

    List<Spot> spots() {
        return spots;
    }

    List<Run> runs() {
        return runs;
    }

    /** High-voltage cables of which an end has no place, and no route is written. */
    List<String> lost() {
        return cables().stream()
                .filter(link -> runs.stream().noneMatch(run -> run.links().contains(link)))
                .map(Link::id)
                .toList();
    }

    /** What takes part in the circuit or hangs on it, and whatever holds such a part. */
    private boolean isHighVoltage(Part part) {
        Role role = part.role();
        boolean itself = role != null && (role.ports() != Role.Ports.NONE || role == Role.MOTOR);
        return itself
                || (isCase(part)
                        && dossier.car().job().parts().stream()
                                .anyMatch(other -> part.id().equals(other.inside())
                                        && other.role() != null
                                        && other.role().ports() != Role.Ports.NONE));
    }

    /** The part whose place is its place: itself, if it has one of its own or sits in no case, else the case. */
    private Part container(Part part) {
        Part at = part;
        var seen = new LinkedHashSet<String>();
        while (at.inside() != null && !hasPlace(at) && seen.add(at.id())) {
            Optional<Part> around = part(at.inside());
            if (around.isEmpty() || !isCase(around.get())) {
                break;
            }
            at = around.get();
        }
        return at;
    }

    private static boolean hasPlace(Part part) {
        return part.position() != null && part.position().x() != null;
    }

    /** Whether what is written to be inside it really is: of cables, hoses and mounts only the mass is counted there. */
    static boolean isCase(Part part) {
        return part.role() != Role.CABLES && part.role() != Role.COOLING && part.role() != Role.MOUNTING;
    }

    private Optional<Part> part(@Nullable String id) {
        return dossier.car().job().parts().stream()
                .filter(part -> part.id().equals(id))
                .findFirst();
    }

    private List<Part> inside(Part part) {
        return dossier.car().job().parts().stream()
                .filter(other -> !other.equals(part) && container(other).equals(part))
                .toList();
    }

    private static String zone(Part part) {
        Position position = part.position();
        Enclosure enclosure = part.enclosure();
        return position != null && position.zone() != null
                ? position.zone()
                : enclosure != null && enclosure.place() != null
                        ? enclosure.place().toString()
                        : "";
    }

    private Place place(String path, String name, @Nullable Position position) {
        return new Place(
                value(path, "x", name, position == null ? null : position.x()),
                value(path, "y", name, position == null ? null : position.y()),
                value(path, "z", name, position == null ? null : position.z()));
    }

    private Value value(String path, String axis, String name, @Nullable Quantity quantity) {
        return Value.of(
                dossier.car()
                        .evidence()
                        .stated(
                                path + ".position." + axis,
                                "place of " + name,
                                "mm",
                                quantity,
                                dossier.car().job().job().preparedBy()),
                dossier.units());
    }

    private List<Link> cables() {
        return dossier.car().job().links().stream()
                .filter(link -> link.kind().isCable() || link.kind() == LinkKind.BUSBAR)
                .filter(link -> !end(link.from()).equals(end(link.to())))
                .toList();
    }

    /** The part in the car that an end of a cable lies at; empty words where the end is not known. */
    private String end(@Nullable String end) {
        return part(Columns.end(end)).map(this::container).map(Part::id).orElse("");
    }

    private void collect() {
        var same = new LinkedHashMap<List<Object>, Run>();
        for (Link link : cables()) {
            List<Place> way = Stream.of(
                            place(end(link.from())).stream(),
                            link.route().stream()
                                    .map(position -> place("links[" + link.id() + "]", link.id(), position))
                                    .filter(place -> place.x().isKnown()),
                            place(end(link.to())).stream())
                    .flatMap(places -> places)
                    .toList();
            boolean isRouted = !link.route().isEmpty();
            boolean isKnown = isRouted
                    ? way.size() > 1
                    : place(end(link.from())).isPresent()
                            && place(end(link.to())).isPresent();
            if (isKnown) {
                List<Object> key = List.of(end(link.from()), end(link.to()), isRouted ? link.id() : "");
                Run run = same.computeIfAbsent(key, k -> new Run(new ArrayList<>(), way, isRouted));
                run.links().add(link);
            }
        }
        runs.addAll(same.values());
    }

    private Optional<Place> place(String part) {
        return spots.stream()
                .filter(spot -> spot.part().id().equals(part) && spot.isDrawn())
                .map(Spot::place)
                .findFirst();
    }

    /** The spots in the order of their numbers. */
    Map<Integer, Spot> numbered() {
        var numbered = new LinkedHashMap<Integer, Spot>();
        spots.stream().filter(Spot::isDrawn).forEach(spot -> numbered.put(spot.number(), spot));
        return numbered;
    }
}
