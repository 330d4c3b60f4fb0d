package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.dossier.Dossier;
import kerbfolio.dossier.Inspection;
import kerbfolio.dossier.Shown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FiguresTest {
    private static final List<String> ALL = List.of("corner-weights", "centre-movement", "mass-ledger", "axle-margins");

    private static List<String> ids(JobText job) {
        return Figures.of(job.dossier()).stream().map(Figure::id).toList();
    }

    /** The samples, and jobs at the edge of what a shop writes. */
    static Stream<Dossier> jobs() {
        return Stream.concat(
                Stream.of("estate", "first", "pickup").map(Drawn::sample),
                Stream.of(
                                TractionText.sound(),
                                LocationPlanTest.placed(),
                                CircuitDrawingTest.three(),
                                crowded(JobText.onFourCorners()),
                                crowded(JobText.onTwoAxles()),
                                JobText.onFourCorners().corners("as-delivered", 400, 350, 340, 310),
                                JobText.onFourCorners().with("job.units", "us").corners("as-delivered", 1, 30000, 2, 9),
                                JobText.onFourCorners()
                                        .with("vehicle.wheelbase", "1.1 m")
                                        .with("vehicle.track", "{ front: 1.9 m, rear: 1.2 m }"),
                                JobText.onTwoAxles()
                                        .with("vehicle.wheelbase", "6.5 m")
                                        .without("vehicle.track")
                                        .without("weighings.as-received"),
                                JobText.onTwoAxles()
                                        .without("vehicle.wheelbase")
                                        .without("vehicle.track"),
                                JobText.onTwoAxles()
                                        .with("vehicle.ratings.front-axle", "814.2 kg")
                                        .with("vehicle.ratings.rear-axle", "90 kg"),
                                JobText.onFourCorners()
                                        .without("weighings.as-received.corners.left-rear")
                                        .without("weighings.as-delivered.corners.right-front")
                                        .add("parts", "{ id: a, name: box }")
                                        .add("removed", "{ id: b, name: bag, mass: 2 kg, mass-from: us }"))
                        .map(JobText::dossier));
    }

    /** One part of 400 kg, one of half a kilogram, many between, with names nobody can print on one line. */
    private static JobText crowded(JobText job) {
        String longName = "a name that goes on and on until nobody reads it any more, " + "W".repeat(200);
        job.add("removed", "{ id: none, name: without a mass }");
        for (int i = 0; i < 30; i++) {
            String mass = i == 7 ? "400 kg" : i == 9 ? "0.5 kg" : i + " kg";
            job.add("parts", "{ id: p" + i + ", name: \"" + longName + "\", mass: " + mass + ", mass-from: maker }");
            job.add(
                    "removed",
                    "{ id: r" + i + ", name: \"\u05e9\u05dc\u4e2d\u2610 " + i + "\", mass: 1 kg, mass-from: us }");
        }
        return job;
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void everyWordStaysInsideTheFigure(Dossier dossier) {
        for (Figure figure : Figures.of(dossier)) {
            for (Drawn.Words words : Drawn.of(figure).words()) {
                assertTrue(
                        words.room().getMinX() > -0.5
                                && words.room().getMinY() > -0.5
                                && words.room().getMaxX() < figure.width() + 0.5
                                && words.room().getMaxY() < figure.height() + 0.5,
                        figure.id() + ": " + words);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void noTwoWordsLieOnEachOther(Dossier dossier) {
        for (Figure figure : Figures.of(dossier)) {
            List<Drawn.Words> words = Drawn.of(figure).words();
            for (int i = 0; i < words.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertFalse(
                            words.get(i).room().intersects(words.get(j).room()),
                            figure.id() + ": " + words.get(i) + " on " + words.get(j));
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void noWordIsSmallerThanSevenPoints(Dossier dossier) {
        for (Figure figure : Figures.of(dossier)) {
            Drawn.of(figure).words().forEach(words -> assertTrue(words.size() >= 7, words.toString()));
        }
    }

    @Test
    void figuresDrawnSmallerStayTidy() {
        everyWordStaysInsideTheFigure(CircuitDrawingTest.many().dossier());
        noTwoWordsLieOnEachOther(CircuitDrawingTest.many().dossier());
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void whatIsDrawnIsAlsoSaidInWords(Dossier dossier) {
        for (Figure figure : Figures.of(dossier)) {
            String said = figure.alternative().replace('\u00a0', ' ');
            Drawn.of(figure).texts().stream()
                    .filter(text -> text.matches("[+\u2212]?[0-9][0-9.]*( ± [0-9.]+)? (kg|lb|mm|in|V|A|kA|s|min)"))
                    .forEach(text -> assertTrue(said.contains(text), figure.id() + " does not say " + text));
            assertFalse(figure.caption().isBlank());
        }
    }

    @Test
    void aFigureKeepsItsProportionsInAnyRoom() {
        Figure figure = Drawn.figure(Drawn.sample("pickup"), "corner-weights");
        List<Drawn.Words> own = Drawn.of(figure).words();
        List<Drawn.Words> wide =
                Drawn.of(figure, 4 * figure.width(), 2 * figure.height()).words();
        for (int i = 0; i < own.size(); i++) {
            assertEquals(2 * own.get(i).room().getWidth(), wide.get(i).room().getWidth(), 1e-6);
            assertEquals(
                    figure.width() + 2 * own.get(i).room().getX(),
                    wide.get(i).room().getX(),
                    1e-6);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"estate", "first", "pickup"})
    void aFullSampleHasEveryFigure(String name) {
        assertEquals(
                ALL,
                Figures.of(Drawn.sample(name)).stream()
                        .map(Figure::id)
                        .limit(ALL.size())
                        .toList());
    }

    @Test
    void aJobThatSaysNothingHasNoFigure() {
        assertEquals(List.of(), ids(JobText.blank()));
    }

    @Test
    void aFigureWithNothingToShowIsAbsent() {
        assertEquals(List.of("corner-weights"), ids(JobText.onTwoAxles().without("vehicle")));
        assertEquals(
                List.of("mass-ledger"),
                ids(JobText.blank().add("parts", "{ id: a, name: box, mass: 2 kg, mass-from: maker }")));
        assertEquals(List.of(), ids(JobText.blank().add("parts", "{ id: a, name: box }")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"estate", "first", "pickup"})
    void massesAreThoseOfTheInspectionPart(String name) {
        Dossier dossier = Drawn.sample(name);
        Drawn plan = Drawn.of(Drawn.figure(dossier, "corner-weights"));
        for (Inspection.WeightLine line : dossier.inspection().weights()) {
            for (Shown shown : List.of(line.before(), line.after(), line.change())) {
                assertTrue(plan.shows(shown.large()), line.what() + " " + shown);
            }
        }
        Drawn ledger = Drawn.of(Drawn.figure(dossier, "mass-ledger"));
        Stream.concat(dossier.inspection().fitted().stream(), dossier.inspection().removed().stream())
                .forEach(line -> assertTrue(ledger.shows(line.mass().large()), line.name()));
        Inspection.LedgerSum whole = dossier.inspection().ledger().get(0);
        assertTrue(ledger.shows(whole.scales().large())
                && ledger.shows(whole.ledger().large()));
        Drawn margins = Drawn.of(Drawn.figure(dossier, "axle-margins"));
        for (Inspection.WeightLine line : dossier.inspection().weights()) {
            if (line.permitted().isKnown()) {
                assertTrue(margins.shows(line.after().large()), line.what());
                assertTrue(margins.texts()
                        .contains((line.what() + ", permitted " + line.permitted()).replace('\u00a0', ' ')));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"estate", "first", "pickup"})
    void whatWasFoundIsThatOfTheWorkings(String name) {
        Dossier dossier = Drawn.sample(name);
        Drawn margins = Drawn.of(Drawn.figure(dossier, "axle-margins"));
        Drawn centre = Drawn.of(Drawn.figure(dossier, "centre-movement"));
        dossier.examinations()
                .forEach(examination -> examination.rows().stream()
                        .filter(row -> !row.finding().subject().startsWith("lift "))
                        .forEach(row -> {
                            String large =
                                    Shown.of(row.finding(), dossier.units()).large();
                            switch (examination.check().id()) {
                                case "axle-margin",
                                        "laden-axle-margin",
                                        "gross-margin",
                                        "laden-gross-margin",
                                        "seated-gross-margin" ->
                                    assertTrue(
                                            margins.shows(large)
                                                    && margins.texts()
                                                            .contains(row.verdict()
                                                                    .toString()),
                                            row.id());
                                case "centre-along", "centre-height" ->
                                    assertTrue(
                                            centre.texts().stream()
                                                    .anyMatch(t -> t.startsWith(large.replace('\u00a0', ' '))),
                                            row.id());
                                case "front-share" ->
                                    assertTrue(
                                            centre.texts().stream()
                                                    .anyMatch(t -> t.contains(large.replace('\u00a0', ' '))),
                                            row.id());
                                default -> {}
                            }
                        }));
    }

    @Test
    void aLongNameIsCutWithAnEllipsis() {
        List<String> texts = Drawn.of(Drawn.figure(crowded(JobText.onTwoAxles()).dossier(), "mass-ledger"))
                .texts();
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("a name that") && text.endsWith("\u2026")));
        assertTrue(IntStream.range(0, texts.size()).allMatch(i -> texts.get(i).length() < 120));
    }

    /** Names of 32 characters beside the longest bars there can be, all with their uncertainty. */
    @Test
    void namesOfAnOrdinaryLengthStandWhole() {
        JobText job = JobText.onTwoAxles();
        String name = "charger bracket with cable gland";
        for (int i = 1; i <= 14; i++) {
            job.add("parts", "{ id: p" + i + ", name: " + name + ", mass: 146.0 kg ± 0.9 kg, mass-from: maker }");
            job.add("removed", "{ id: r" + i + ", name: " + name + ", mass: 146.0 kg ± 0.9 kg, mass-from: maker }");
        }
        assertEquals(
                28,
                Drawn.of(Drawn.figure(job.dossier(), "mass-ledger")).texts().stream()
                        .filter(name::equals)
                        .count());
    }

    @Test
    void aRemainderHeavierThanAnyPartIsSaidNotToBeToScale() {
        Drawn ledger = Drawn.of(Drawn.figure(many(30), "mass-ledger"));
        assertTrue(ledger.texts().contains("17 smaller parts, not to scale"), ledger.toString());
        assertTrue(ledger.texts().stream().anyMatch(text -> text.startsWith("sums to a scale of their own")));
        Drawn few = Drawn.of(Drawn.figure(many(14), "mass-ledger"));
        assertTrue(few.texts().stream().noneMatch(text -> text.contains("not to scale")));
    }

    private static Dossier many(int count) {
        JobText job = JobText.onTwoAxles();
        IntStream.range(0, count)
                .forEach(i ->
                        job.add("parts", "{ id: p" + i + ", name: box, mass: " + (10 + i) + " kg, mass-from: maker }"));
        return job.dossier();
    }
}
