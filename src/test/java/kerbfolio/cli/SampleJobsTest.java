package kerbfolio.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import kerbfolio.check.Trade;
import kerbfolio.check.Verdict;
import kerbfolio.job.Gate;
import kerbfolio.job.Tier;
import kerbfolio.quantity.UnitSystem;
import kerbfolio.release.GateReport;
import kerbfolio.release.GateState;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every sample job, as {@code check} prints it today, against the print that was last accepted. With {@code -Daccept} the
 * new prints are written; look at the difference before it is committed.
 */
class SampleJobsTest {
    private static final Path JOBS = Path.of("sample-jobs");
    private static final Path EXPECTED = Path.of("src/test/resources/expected");

    private static Set<String> names(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(ending))
                    .map(name -> name.substring(0, name.length() - ending.length()))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @TestFactory
    Stream<DynamicTest> everyJobPrintsWhatWasAccepted() throws IOException {
        return names(JOBS, ".yaml").stream().map(name -> DynamicTest.dynamicTest(name, () -> print(name)));
    }

    private static void print(String name) throws IOException {
        Typed typed = Typed.of("check", JOBS.resolve(name + ".yaml").toString());
        assertEquals("", typed.err());
        Path expected = EXPECTED.resolve(name + ".txt");
        if (System.getProperty("accept") != null) {
            Files.createDirectories(EXPECTED);
            Files.writeString(expected, typed.out());
        }
        assertTrue(Files.exists(expected), "no " + expected + "; run once with -Daccept and read it");
        assertEquals(Files.readString(expected), typed.out());
    }

    @Test
    void everyAcceptedPrintHasItsJob() throws IOException {
        assertEquals(names(JOBS, ".yaml"), names(EXPECTED, ".txt"));
    }

    private static Rerun rerun(String name) throws Exception {
        return Rerun.of(JOBS.resolve(name + ".yaml"));
    }

    private static Map<Gate, GateState> states(Rerun rerun) {
        return rerun.release().gates().stream().collect(Collectors.toMap(GateReport::gate, GateReport::state));
    }

    private static Set<Verdict> weightVerdicts(Rerun rerun) {
        return rerun.release().spoken().stream()
                .filter(examination -> examination.check().trade() == Trade.WEIGHT)
                .flatMap(examination -> examination.rows().stream())
                .map(row -> row.verdict())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Verdict.class)));
    }

    @Test
    void theFirstJobIsHalfAnHoursWriting() throws Exception {
        assertTrue(Files.readAllLines(JOBS.resolve("first.yaml")).size() <= 100);
        Rerun first = rerun("first");
        assertEquals(Tier.FIRST, first.file().job().job().tier());
        assertEquals(UnitSystem.SI, first.dossier().units());
        assertEquals(1, first.exitCode());
    }

    @Test
    void thePickUpIsClosedAndConfirmedAsFarAsThisVersionExamines() throws Exception {
        Rerun pickup = rerun("pickup");
        assertEquals(Tier.FULL, pickup.file().job().job().tier());
        assertEquals(UnitSystem.SI, pickup.dossier().units());
        assertEquals(EnumSet.of(Verdict.MET, Verdict.NO_LIMIT), weightVerdicts(pickup));
        assertFalse(states(pickup).containsValue(GateState.HELD), states(pickup).toString());
        assertEquals(List.of(), pickup.dossier().handover().open());
        // What is left is what no version examines yet, and the gates that wait for it.
        for (GateReport report : pickup.release().gates()) {
            report.reasons()
                    .forEach(reason -> assertTrue(
                            reason.text().startsWith("this version does not examine ")
                                    || reason.text().startsWith("gate "),
                            reason.text()));
        }
    }

    @Test
    void theEstateIsHeldWithSomeThingsOpen() throws Exception {
        Rerun estate = rerun("estate");
        assertEquals(Tier.FULL, estate.file().job().job().tier());
        assertEquals(UnitSystem.US, estate.dossier().units());
        assertEquals(GateState.HELD, states(estate).get(Gate.INSPECTION));
        assertTrue(weightVerdicts(estate).contains(Verdict.NOT_MET));
        assertTrue(!estate.dossier().handover().open().isEmpty());
        assertTrue(!estate.dossier().handover().closed().isEmpty());
    }

    @Test
    void aVersionThatExaminesNoHighVoltageSaysSoOfEveryJob() throws Exception {
        for (String name : names(JOBS, ".yaml")) {
            assertTrue(states(rerun(name)).get(Gate.ENERGISE) != GateState.NO_HOLD, name);
        }
    }
}
