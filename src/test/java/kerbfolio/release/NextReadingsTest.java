package kerbfolio.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.source.Table;
import org.junit.jupiter.api.Test;

/** What is missing, by errand; instruments and minutes are those of {@code shared/tables/next-readings.csv}. */
class NextReadingsTest {
    private static List<NextReading> next(JobText job) {
        return job.release().next();
    }

    private static NextReading the(String what, JobText job) {
        return next(job).stream()
                .filter(reading -> reading.what().contains(what))
                .findFirst()
                .orElseThrow(() -> new AssertionError(what + " in " + next(job)));
    }

    /** The whole car of a first-tier job, with nothing missing but what a test takes out. */
    private final JobText first = TractionText.complete();

    @Test
    void nothingMissingAsksForNothing() {
        assertEquals(List.of(), next(first));
    }

    @Test
    void oneErrandStandsForAllItsKeys() {
        NextReading plate = the("permitted masses", first.without("vehicle.ratings"));
        assertEquals("eyes", plate.instrument());
        assertEquals(5, plate.minutes());
        assertEquals(
                List.of("vehicle.ratings.gross", "vehicle.ratings.front-axle", "vehicle.ratings.rear-axle"),
                plate.paths());
        assertEquals(
                List.of(
                        "gross-margin/as-delivered",
                        "axle-margin/front-axle-as-delivered",
                        "axle-margin/rear-axle-as-delivered",
                        "seated-gross-margin/every-seat-taken"),
                plate.findings());
    }

    /** By hand: the plate lifts 4 findings in 5 minutes, the seats 1 in 1, the scales 4 in 20. */
    @Test
    void whatLiftsMostForTheFewestMinutesStandsFirst() {
        var job = first.without("vehicle.ratings").without("vehicle.seats").without("weighings.as-delivered");
        assertEquals(
                List.of(1, 5, 20), next(job).stream().map(NextReading::minutes).toList());
    }

    @Test
    void theRankNeverFalls() {
        List<NextReading> next = next(JobText.blank());
        assertFalse(next.isEmpty());
        for (int i = 1; i < next.size(); i++) {
            assertTrue(gain(next.get(i - 1)) >= gain(next.get(i)), next.get(i).what());
        }
    }

    private static double gain(NextReading reading) {
        return (double) reading.findings().size() / reading.minutes();
    }

    @Test
    void onlyWhatAGateAsksForIsAskedFor() {
        assertTrue(next(JobText.blank().with("job.tier", "first")).stream()
                .flatMap(reading -> reading.paths().stream())
                .noneMatch(path -> path.startsWith("vehicle.springs")));
    }

    @Test
    void theNearestPatternOfAPathSaysWhatTheErrandIs() {
        var job = JobText.onTwoAxles()
                .add("parts", "{ id: box, mass: 200 kg, mass-from: maker }")
                .add("removed", "{ id: engine, position: { x: 0 mm } }");
        assertEquals(
                List.of("parts[box].position.x"),
                the("where the part sits", job).paths());
        assertEquals(
                List.of("removed[engine].mass"),
                the("weigh what was taken out", job).paths());
        assertEquals(
                List.of("removed"),
                the(
                                "list what was taken out",
                                JobText.onTwoAxles()
                                        .add(
                                                "parts",
                                                "{ id: box, mass: 200 kg, mass-from: maker, position: { x: 0 mm } }"))
                        .paths());
    }

    @Test
    void everyErrandHasAnInstrumentAndItsMinutes() {
        Table.of("next-readings").rows().forEach((path, row) -> {
            String[] columns = row.split(";");
            assertEquals(3, columns.length, path);
            assertTrue(Integer.parseInt(columns[2]) >= 0, path);
        });
    }

    /** Of two rows for one path the first would be lost without a word. */
    @Test
    void noPathStandsInTheTableTwice() throws IOException {
        List<String> paths = Files.readAllLines(Path.of("shared/tables/next-readings.csv")).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.substring(0, line.indexOf(';')))
                .toList();
        assertEquals(List.copyOf(new LinkedHashSet<>(paths)), paths);
    }

    /** A car is as it was received only once. */
    @Test
    void whatComesTooLateIsNotAskedFor() {
        assertEquals(
                "0",
                Table.of("next-readings").rows().get("weighings.as-received*").split(";")[2]);
        List<NextReading> next = next(JobText.onTwoAxles().without("weighings.as-received"));
        assertTrue(
                next.stream().noneMatch(reading -> reading.paths().contains("weighings.as-received")), next.toString());
    }

    @Test
    void whoWasAboardCanStillBeWrittenDown() {
        List<NextReading> next = next(JobText.onTwoAxles().without("weighings.as-received.state"));
        assertTrue(
                next.stream()
                        .anyMatch(reading -> reading.paths().equals(List.of("weighings.as-received.state"))
                                && reading.what().startsWith("write down who and what was aboard")),
                next.toString());
    }

    @Test
    void everythingACheckCanLackIsAnErrandOfTheTable() {
        for (NextReading reading : next(JobText.blank())) {
            assertFalse(reading.what().startsWith("record "), reading.what());
        }
    }
}
