package kerbfolio.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.job.Part;
import org.junit.jupiter.api.Test;

class GuardsTest {
    private static List<List<List<String>>> ways(JobText job, String id) {
        Car car = job.car();
        return car.circuit().links().stream()
                .filter(link -> link.id().equals(id))
                .flatMap(link -> car.guards().of(link).stream())
                .map(guard -> guard.ways().stream()
                        .map(way -> way.fuses().stream().map(Part::id).toList())
                        .toList())
                .distinct()
                .toList();
    }

    private static Map<String, Set<String>> own(JobText job) {
        var own = new TreeMap<String, Set<String>>();
        job.car()
                .guards()
                .ownFuses()
                .forEach((box, fuses) ->
                        own.put(box.id(), fuses.stream().map(Part::id).collect(Collectors.toSet())));
        return own;
    }

    @Test
    void bothConductorsOfABranchAreGuardedByTheFuseInOne() {
        for (String cable : List.of("c-heater-plus", "c-heater-minus")) {
            assertEquals(
                    List.of(List.of(List.of("front-fuse", "rear-fuse", "heater-fuse"))),
                    ways(TractionText.sound(), cable));
        }
    }

    @Test
    void stringsSideBySideAreTwoWays() {
        assertEquals(
                List.of(List.of(List.of("front-fuse"), List.of("rear-fuse"))),
                ways(TractionText.twoStrings(), "c-plus"));
    }

    @Test
    void onlyWhatLiesInAStringSharesTheCurrent() {
        Guards two = TractionText.twoStrings().car().guards();
        assertTrue(two.isOfOneString("c-mid-rear") && two.isOfOneString("front-fuse"));
        assertFalse(two.isOfOneString("c-plus") || two.isOfOneString("heater-fuse"));
        Guards one = TractionText.sound().car().guards();
        assertFalse(one.isOfOneString("c-mid-rear") || one.isOfOneString("front-fuse"));
    }

    @Test
    void eachBoxHasTheFuseNextToIt() {
        Map<String, Set<String>> own = Map.of("front-box", Set.of("front-fuse"), "rear-box", Set.of("rear-fuse"));
        assertEquals(own, own(TractionText.sound()));
        assertEquals(own, own(TractionText.twoStrings()));
    }

    /** The rear fuse is one busbar from its box; moved beside the front box it is that one's second. */
    @Test
    void aFuseCountsForTheNearerBoxOnly() {
        var moved = TractionText.sound()
                .drop("links", "b2")
                .alter("links", "c-mid-rear", "rear-fuse/2", "rear-box/+")
                .alter("links", "c-mid-front", "front-box/-", "rear-fuse/1")
                .add("links", "{ id: b9b, kind: busbar, from: rear-fuse/2, to: front-box/- }");
        assertEquals(Map.of("front-box", Set.of("front-fuse", "rear-fuse"), "rear-box", Set.of()), own(moved));
    }

    /** A fuse behind the point where two strings meet belongs to neither. */
    @Test
    void aFuseThatTwoStringsShareIsNobodysOwn() {
        var shared = TractionText.twoStrings()
                .drop("links", "b2")
                .alter("links", "c-mid-rear", "rear-fuse/2", "rear-box/+")
                .drop("links", "b3")
                .alter("links", "c-mid-front", "front-fuse/2", "front-fuse/1")
                .add("links", "{ id: b9b, kind: busbar, from: front-box/+, to: front-fuse/1 }");
        assertEquals(Map.of("front-box", Set.of(), "rear-box", Set.of()), own(shared));
    }
}
