package kerbfolio.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.car.Car;
import kerbfolio.check.Check;
import kerbfolio.check.Examination;
import kerbfolio.check.Limits;
import kerbfolio.check.RequirementSet;
import kerbfolio.check.RequirementSet.Evidence;
import kerbfolio.check.Trade;
import kerbfolio.checks.CheckList;
import kerbfolio.job.Gate;
import kerbfolio.reading.RecordReader;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What the requirement sets that travel with the program ask, against what its checks look for. */
class RequirementSetsAgreeTest {
    private static final String HOUSE = "house";

    /** Every set by the name of its file. */
    private static Map<String, RequirementSet> sets() throws Exception {
        var sets = new LinkedHashMap<String, RequirementSet>();
        try (Stream<Path> files = Files.list(Path.of("shared/requirement-sets"))) {
            for (Path file : files.sorted().toList()) {
                String name = String.valueOf(file.getFileName());
                sets.put(
                        name.replace(".yaml", ""),
                        RecordReader.read(name, Files.readAllBytes(file), RequirementSet.class)
                                .value());
            }
        }
        assertTrue(sets.size() > 2, "sets: " + sets.keySet());
        return sets;
    }

    private static <T> Map<String, T> orEmpty(@Nullable Map<String, T> map) {
        return map == null ? Map.of() : map;
    }

    /** The keys of all checks: those they look up on a job with nothing in it, or on one with a whole circuit. */
    private static Set<String> keysLookedUp() {
        var keys = new TreeSet<String>();
        var noting = new HashMap<String, RequirementSet.Entry>() {
            private static final long serialVersionUID = 1L;

            @Override
            public RequirementSet.@Nullable Entry get(Object key) {
                keys.add((String) key);
                return null;
            }
        };
        var empty = new RequirementSet("empty", "Empty", null, null, null, null);
        var set = new RequirementSet("noting", "Noting", null, null, noting, null);
        JobText boxAlone =
                TractionText.sound().add("readings.isolation", "{ id: iso-3, method: monitor, joined: [ front-box ] }");
        for (JobText text : List.of(JobText.blank(), boxAlone)) {
            var limits = new Limits(set, empty, List.of(), text.job());
            var car = text.car();
            CheckList.ALL.forEach(check -> Examination.of(check, car, limits));
        }
        return keys;
    }

    @Test
    void aSetIsNamedAfterItsFile() throws Exception {
        sets().forEach((file, set) -> assertEquals(file, set.set()));
    }

    @Test
    void everyKeyACheckLooksUpStandsInSomeSet() throws Exception {
        Set<String> keys = keysLookedUp();
        assertTrue(keys.contains("gross-margin") && keys.contains("occupant-mass"), keys.toString());
        for (RequirementSet set : sets().values()) {
            keys.removeAll(orEmpty(set.limits()).keySet());
        }
        assertEquals(Set.of(), keys);
    }

    @Test
    void everyKeyOfASetIsLookedUpBySomeCheck() throws Exception {
        for (RequirementSet set : sets().values()) {
            var unused = new TreeSet<>(orEmpty(set.limits()).keySet());
            unused.removeAll(keysLookedUp());
            assertEquals(Set.of(), unused, set.set());
        }
    }

    @Test
    void aKeyMeansTheSameInAllSets() throws Exception {
        var meant = new HashMap<String, String>();
        for (RequirementSet set : sets().values()) {
            orEmpty(set.limits()).forEach((key, entry) -> {
                String meaning = entry.bound() + " " + entry.value().unit().dim();
                assertEquals(meant.computeIfAbsent(key, first -> meaning), meaning, set.set() + ": " + key);
            });
        }
    }

    @Test
    void everyDocumentQuotedIsDescribedAndEveryDocumentDescribedIsQuoted() throws Exception {
        for (RequirementSet set : sets().values()) {
            Set<String> quoted = orEmpty(set.limits()).values().stream()
                    .map(RequirementSet.Entry::document)
                    .collect(Collectors.toSet());
            assertEquals(orEmpty(set.documents()).keySet(), quoted, set.set());
        }
    }

    private static List<String> tiers(Evidence evidence) {
        return Stream.of(evidence.first(), evidence.inspection(), evidence.full())
                .filter(tier -> tier != null)
                .flatMap(List::stream)
                .toList();
    }

    @Test
    void evidenceIsAskedOfGatesThatExist() throws Exception {
        Set<String> gates = Arrays.stream(Gate.values()).map(Gate::toString).collect(Collectors.toSet());
        for (RequirementSet set : sets().values()) {
            assertTrue(gates.containsAll(orEmpty(set.evidence()).keySet()), set.set());
        }
    }

    @Test
    void whatAGateAsksForIsACheckOrATradeAndStandsThereOnce() throws Exception {
        var known = new HashSet<String>();
        CheckList.ALL.forEach(check -> known.add(check.id()));
        Arrays.stream(Trade.values()).forEach(trade -> known.add(trade.key()));
        for (RequirementSet set : sets().values()) {
            orEmpty(set.evidence()).forEach((gate, evidence) -> {
                var seen = new HashSet<String>();
                for (String asked : tiers(evidence)) {
                    assertTrue(known.contains(asked), set.set() + ", " + gate + ": " + asked);
                    assertTrue(seen.add(asked), set.set() + ", " + gate + " twice: " + asked);
                }
                for (Check check : CheckList.ALL) {
                    assertTrue(
                            !(seen.contains(check.id())
                                    && seen.contains(check.trade().key())),
                            set.set() + ", " + gate + ": " + check.id() + " and its whole trade");
                }
            });
        }
    }

    /** Otherwise its gate would ask for a figure it never judges. */
    @Test
    void whatASetAsksForItAlsoLimits() throws Exception {
        Map<String, RequirementSet> sets = sets();
        RequirementSet house = sets.get(HOUSE);
        var job = JobText.blank().job();
        var unlimited = new ArrayList<String>();
        for (RequirementSet home : sets.values()) {
            if (home.set().equals(HOUSE)) {
                continue;
            }
            var limits = new Limits(home, house, List.of(), job);
            for (Gate gate : Gate.values()) {
                Set<String> asked = limits.evidence(gate);
                CheckList.ALL.stream()
                        .filter(check -> check.gate().isPresent())
                        .filter(check -> asked.contains(check.id())
                                || asked.contains(check.trade().key()))
                        .flatMap(check -> Examination.of(check, new Car(job), limits).rows().stream())
                        .filter(row -> row.finding().limit().isEmpty())
                        .forEach(row -> unlimited.add(home.set() + ": " + row.id()));
            }
        }
        assertEquals(List.of(), unlimited);
    }

    /** A figure that clears a gate was read by somebody who says so, or is a rule of the program itself. */
    @Test
    void noSetButTheHouseGivesRulesOfTheProgram() throws Exception {
        for (RequirementSet set : sets().values()) {
            if (!set.set().equals(HOUSE)) {
                orEmpty(set.limits())
                        .forEach((key, entry) ->
                                assertTrue(!Boolean.TRUE.equals(entry.ownRule()), set.set() + ": " + key));
            }
        }
    }

    @Test
    void everyOtherFileOfTheFolderIsReadToo() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("shared/requirement-sets"))) {
            assertTrue(files.allMatch(file -> file.toString().endsWith(".yaml")));
        }
    }
}
