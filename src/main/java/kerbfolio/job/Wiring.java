package kerbfolio.job;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import kerbfolio.job.Role.Ports;
import kerbfolio.quantity.Quantity;
import kerbfolio.quantity.Sense;
import kerbfolio.reading.ComplaintBook;
import kerbfolio.reading.Nearest;
import kerbfolio.reading.Quoted;
import org.jspecify.annotations.Nullable;

/** What joins parts: each end of a link lies on a terminal its part has, and each loop passes connectors that exist. */
final class Wiring {
    /** What a strap or a mount may end on that is no part. */
    private static final String CHASSIS = "chassis";

    private final Job job;
    private final ComplaintBook complaints;
    private final Map<String, Part> parts = new LinkedHashMap<>();

    Wiring(Job job, ComplaintBook complaints) {
        this.job = job;
        this.complaints = complaints;
        job.parts().stream().filter(part -> !part.id().isEmpty()).forEach(part -> parts.put(part.id(), part));
    }

    void examine() {
        Set<String> connectors = connectors();
        for (Link link : job.links()) {
            String path = "links[" + link.id() + "]";
            if (parts.containsKey(link.id())) {
                complaints.add(
                        path + ".id", Quoted.of(link.id()) + " is also the id of a part; give one of them another id");
            }
            ends(path, link);
            for (int i = 0; i < link.through().size(); i++) {
                called(path + ".through[" + i + "]", "connector", link.through().get(i), connectors);
            }
        }
        var told = new HashSet<String>();
        for (Part part : parts.values()) {
            String path = "parts[" + part.id() + "]";
            poles(path + ".poles", part.poles());
            inside(path + ".inside", part, told);
        }
    }

    /** Every connector by its id, which no two of them share: an interlock loop would not know which it passes. */
    private Set<String> connectors() {
        var owners = new HashMap<String, String>();
        for (Part part : job.parts()) {
            for (Connector connector : part.connectors()) {
                String owner = owners.putIfAbsent(connector.id(), part.id());
                if (owner != null && !owner.equals(part.id()) && !connector.id().isEmpty()) {
                    complaints.add(
                            "parts[" + part.id() + "].connectors[" + connector.id() + "].id",
                            Quoted.of(connector.id()) + " is also a connector of " + Quoted.of(owner)
                                    + "; give one of them another id");
                }
            }
        }
        var ids = new LinkedHashSet<>(owners.keySet());
        ids.remove("");
        return ids;
    }

    private void ends(String path, Link link) {
        String from = link.from();
        String to = link.to();
        if (link.kind().isTraction() && (from == null || to == null)) {
            complaints.add(
                    path + (from == null ? ".from" : ".to"), "a " + link.kind() + " link joins two parts; write both");
        }
        if (from != null && from.equals(to)) {
            complaints.add(path + ".to", "it ends where it begins, at " + Quoted.of(from) + "; write its other end");
        }
        boolean fromLies = from != null && lies(path + ".from", link, from);
        boolean toLies = to != null && lies(path + ".to", link, to);
        if (fromLies && toLies && link.kind().isTraction() && isOneConductor(from) != isOneConductor(to)) {
            complaints.add(
                    path + (isOneConductor(from) ? ".to" : ".from"),
                    "one end names a terminal and the other does not; write it at both ends, or at none where the link"
                            + " joins both poles");
        }
    }

    private static boolean isOneConductor(@Nullable String end) {
        return end != null && end.contains("/");
    }

    /** Whether an end lies on a part, and in the traction circuit on a terminal of it. */
    private boolean lies(String path, Link link, String end) {
        String id = Link.part(end);
        if (!link.kind().isTraction() && id.equals(CHASSIS)) {
            return true;
        }
        if (!called(path, "part", id, parts.keySet())) {
            return false;
        }
        Part part = parts.get(id);
        return part == null || !link.kind().isTraction() || hasTerminal(path, part, end);
    }

    private boolean hasTerminal(String path, Part part, String end) {
        List<String> terminals = part.terminals();
        String what = "";
        if (part.role() == null) {
            what = " has no role, so that nobody knows its terminals; write its role under parts";
        } else if (terminals.isEmpty()) {
            what = " is a " + part.role() + " and has no terminal of the traction circuit; name what the cable ends on";
        } else if (isOneConductor(end) && !terminals.contains(end.substring(end.lastIndexOf('/') + 1))) {
            what = " has no terminal " + Quoted.of(end.substring(end.lastIndexOf('/') + 1)) + "; it has "
                    + String.join(", ", terminals);
        } else if (!isOneConductor(end) && part.role().ports() == Ports.IN_LINE) {
            what = " lies in the conductor and needs a terminal; write " + part.id() + "/1 or " + part.id() + "/2";
        }
        if (!what.isEmpty()) {
            complaints.add(path, Quoted.of(part.id()) + what);
        }
        return what.isEmpty();
    }

    private void poles(String path, @Nullable Quantity poles) {
        if (poles != null
                && (poles.sense() != Sense.VALUE
                        || poles.half().isPresent()
                        || (poles.number() != 1 && poles.number() != 2))) {
            complaints.add(path, "`" + poles + "` cannot be; write 1 or 2");
        }
    }

    private void inside(String path, Part part, Set<String> told) {
        String holder = part.inside();
        if (holder == null || !called(path, "part", holder, parts.keySet()) || told.contains(part.id())) {
            return;
        }
        var chain = new LinkedHashSet<String>();
        for (String at = part.id(); at != null && chain.add(at); at = holder(at)) {
            if (part.id().equals(holder(at))) {
                told.addAll(chain);
                complaints.add(
                        path,
                        chain.size() == 1
                                ? "a part does not sit in itself; name what it sits in"
                                : "these sit in each other: " + String.join(", ", chain)
                                        + "; leave the key out where nothing holds the part");
            }
        }
    }

    private @Nullable String holder(String id) {
        Part part = parts.get(id);
        return part == null ? null : part.inside();
    }

    private boolean called(String path, String what, String id, Collection<String> known) {
        if (known.contains(id)) {
            return true;
        }
        complaints.add(path, "no " + what + " " + Quoted.of(id) + Nearest.hint(id, known, "; list it under parts"));
        return false;
    }
}
