package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import kerbfolio.check.Verdict;
import kerbfolio.dossier.WorkingsPart.Line;
import kerbfolio.dossier.WorkingsPart.Page;
import kerbfolio.dossier.WorkingsPart.Step;
import org.junit.jupiter.api.Test;

class WorkingsPartTest {
    private static Page page(JobText job, String check) {
        return job.dossier().workings().pages().stream()
                .filter(page -> page.id().equals(check))
                .findFirst()
                .orElseThrow();
    }

    private static Line line(JobText job, String check, int row) {
        return page(job, check).lines().get(row);
    }

    @Test
    void aPageStatesQuestionFormulaSymbolsAndLimit() {
        Page page = page(JobText.onTwoAxles(), "axle-margin");
        assertEquals("Is each axle as delivered within its permitted mass?", page.question());
        assertEquals("weight", page.trade());
        assertEquals("inspection", page.gate());
        assertTrue(page.formula().isPresent());
        assertEquals(
                List.of("margin kg", "permitted mass kg", "mass kg"),
                page.symbols().stream()
                        .map(symbol -> symbol.meaning() + " " + symbol.unit())
                        .toList());
        assertTrue(page.limit().contains("confirmed by B. Reader"), page.limit());
        assertEquals(2, page.lines().size());
        assertTrue(page.isJudged());
        assertFalse(page(JobText.onTwoAxles(), "front-share").isJudged());
    }

    @Test
    void aConstantStandsAmongTheSymbolsWithItsSource() {
        var job = JobText.onTwoAxles()
                .with(
                        "vehicle.springs.rear",
                        "{ rate: 20 N/mm, motion-ratio: \"1\", lean: 0°, tyre-rate: 200 N/mm, from: maker }");
        assertTrue(page(job, "spring-deflection").symbols().stream()
                .anyMatch(symbol -> symbol.meaning().startsWith("9.80665 m/s²")));
    }

    @Test
    void aRowShowsFigureLimitAndVerdict() {
        Line line = line(JobText.onTwoAxles(), "axle-margin", 0);
        assertEquals("axle-margin/front-axle-as-delivered", line.id());
        assertEquals("36.0 ± 1.2 kg", line.value().large().replace('\u00a0', ' '));
        assertEquals("at least 0 kg", line.limit().replace('\u00a0', ' '));
        assertEquals(Verdict.MET, line.verdict());
        assertEquals("", line.why());
    }

    @Test
    void aRowThatIsNotClearSaysWhy() {
        var job = JobText.onTwoAxles();
        assertEquals(
                "the limit lies within the expanded uncertainty",
                line(job.with("weighings.as-delivered.axles.front", "850 kg"), "axle-margin", 0)
                        .why());
        assertTrue(line(job.without("weighings.as-delivered.axles.front"), "axle-margin", 0)
                .why()
                .contains("not recorded"));
        assertEquals(
                "nobody is named who states permitted mass of the rear axle",
                line(job.without("vehicle.ratings.from"), "axle-margin", 1).why());
        assertEquals(
                "B. Reader: solid tyres",
                line(
                                JobText.onTwoAxles()
                                        .without("vehicle.tyres")
                                        .add(
                                                "not-applicable",
                                                "{ check: tyre-speed, by: B. Reader, reason: solid tyres }"),
                                "tyre-speed",
                                0)
                        .why());
    }

    @Test
    void otherSetsAreComparedBesideTheHomeSet() {
        var job = JobText.onTwoAxles()
                .with("job.compared-with", "[us-federal]")
                .with("weighings.as-delivered.axles.front", "900 kg");
        var compared = line(job, "axle-margin", 0).compared();
        assertEquals(1, compared.size());
        assertEquals("us-federal", compared.get(0).set());
        assertEquals(Verdict.NOT_MET, compared.get(0).verdict());
        assertTrue(
                compared.get(0).citation().contains("567.4(g)(4)"),
                compared.get(0).citation());
    }

    private static List<String> rows(Page page) {
        return page.steps().stream().filter(Step::isRow).map(Step::name).toList();
    }

    @Test
    void theRowThatIsWorstOffIsWorkedInFull() {
        // 36 kg are left at the front, 114 kg at the rear.
        assertEquals(List.of("front axle, as delivered"), rows(page(JobText.onTwoAxles(), "axle-margin")));
        var rear = JobText.onTwoAxles().with("weighings.as-delivered.axles.rear", "890 kg");
        assertEquals(List.of("rear axle, as delivered"), rows(page(rear, "axle-margin")));
        // A limit from above: the most used tyre is worst off.
        var tyres = JobText.onTwoAxles().with("weighings.as-delivered.axles.rear", "880 kg");
        assertEquals(List.of("rear axle, as delivered"), rows(page(tyres, "tyre-load")));
    }

    @Test
    void everyRowNotMetIsWorkedInFull() {
        var job = JobText.onTwoAxles()
                .with("weighings.as-delivered.axles.front", "900 kg")
                .with("weighings.as-delivered.axles.rear", "950 kg");
        assertEquals(List.of("front axle, as delivered", "rear axle, as delivered"), rows(page(job, "axle-margin")));
    }

    /** Where many fall short by one formula, the worst three are shown and the table has the others. */
    @Test
    void ofManyRowsNotMetTheWorstThreeAreWorkedInFull() {
        var job = TractionText.sound().with("job.tier", "full");
        List<String> cables = List.of("c-heater-plus", "c-heater-minus", "c-charger-plus", "c-charger-minus");
        cables.forEach(cable -> job.alter("links", cable, "voltage: 1000 V", "voltage: 60 V"));
        Page page = page(job, "cable-voltage");
        assertEquals(
                cables.size(),
                page.lines().stream()
                        .filter(line -> line.verdict() == Verdict.NOT_MET)
                        .count());
        assertEquals(3, rows(page).size());
        assertEquals(1, page.unworked());
    }

    /** A dossier has no empty blocks: what nobody recorded stands in one table. */
    @Test
    void aQuestionOfWhichNothingWasRecordedHasNoPageOfItsOwn() {
        WorkingsPart part =
                JobText.onTwoAxles().without("weighings.as-delivered").dossier().workings();
        List<Page> lacking = part.lacking().stream()
                .flatMap(section -> section.pages().stream())
                .toList();
        Page margin = lacking.stream()
                .filter(page -> page.id().equals("axle-margin"))
                .findFirst()
                .orElseThrow();
        assertTrue(margin.lack().contains("front axle as delivered"), margin.lack());
        assertTrue(part.sections().stream()
                .flatMap(section -> section.pages().stream())
                .noneMatch(lacking::contains));
    }

    @Test
    void questionsStandBySubject() {
        WorkingsPart part = TractionText.sound().dossier().workings();
        assertEquals(
                List.of("weight", "high voltage", "isolation and touch", "battery and charging", "cables and fuses"),
                part.sections().stream().map(WorkingsPart.Section::title).toList());
    }

    /** A conductance is one over a resistance; it needs no step of its own. */
    @Test
    void aFigureTurnedOverIsSaidBesideTheFigureThatLeansOnIt() {
        WorkingsPart part = TractionText.sound().dossier().workings();
        List<Step> steps = Stream.concat(
                        part.shared().stream(), part.pages().stream().flatMap(page -> page.steps().stream()))
                .toList();
        assertTrue(steps.stream().noneMatch(step -> step.name().startsWith("conductance of the bleed")));
        assertTrue(steps.stream()
                .flatMap(step -> step.inputs().stream())
                .anyMatch(input -> input.startsWith("conductance of the bleed") && input.contains("g = 1/r")));
    }

    @Test
    void aStepNamesItsInputsAndTheLargestDoubt() {
        Step step = page(JobText.onTwoAxles(), "axle-margin").steps().get(0);
        assertEquals("36.0 ± 1.2 kg", step.result().large().replace('\u00a0', ' '));
        assertEquals(
                List.of(
                        "permitted mass of the front axle 850 kg, stated, plate",
                        "front axle as delivered 814.0 ± 1.2 kg, measured, axle scales 7, 2026-09-30"),
                step.inputs().stream().map(text -> text.replace('\u00a0', ' ')).toList());
        assertEquals("largest share of the uncertainty: front axle as delivered, 100\u00a0%", step.doubt());
    }

    @Test
    void aSharedErrorIsCalledByItsInstrument() {
        var job = JobText.onTwoAxles()
                .without("instruments")
                .add("instruments", "{ id: pads, of-reading: 2 %, due: 2027-01-01 }");
        assertEquals(
                "largest share of the uncertainty: error of pads in proportion to its readings, 100\u00a0%",
                page(job, "axle-margin").steps().get(0).doubt());
    }

    /** The mass of the car is asked for by several questions; it is worked once and cited by its number. */
    @Test
    void whatSeveralQuestionsLeanOnIsWorkedOnce() {
        WorkingsPart part = JobText.onTwoAxles().dossier().workings();
        List<Step> mass = part.shared().stream()
                .filter(step -> step.name().equals("whole car as delivered"))
                .toList();
        assertEquals(1, mass.size());
        String number = mass.get(0).number();
        assertTrue(number.matches("S\\d+"), number);
        assertTrue(page(JobText.onTwoAxles(), "gross-margin")
                .steps()
                .get(0)
                .inputs()
                .toString()
                .contains(number));
        assertTrue(part.pages().stream()
                .flatMap(page -> page.steps().stream())
                .noneMatch(step -> step.name().equals("whole car as delivered")));
    }

    @Test
    void aLongListIsCountedAndNotRepeated() {
        var job = JobText.onTwoAxles();
        for (int i = 0; i < 6; i++) {
            job.add("parts", "{ id: p" + i + ", mass: 33 kg, mass-from: maker, position: { x: 1 m } }");
        }
        job.add("removed", "{ id: engine, mass: 1 kg, mass-from: maker, position: { x: 1 m } }");
        WorkingsPart part = job.dossier().workings();
        List<String> sources = Stream.concat(
                        part.shared().stream(), part.pages().stream().flatMap(page -> page.steps().stream()))
                .flatMap(step -> step.inputs().stream())
                .toList();
        assertTrue(sources.contains("mass fitted: 6 entries of the record"), sources.toString());
    }

    @Test
    void everyDocumentCitedStandsAmongTheSources() {
        List<String> sources = JobText.onTwoAxles()
                .with("job.compared-with", "[us-federal]")
                .dossier()
                .workings()
                .sources();
        for (String document : List.of("1230/2012", "49 CFR", "UN Regulation No. 30", "ISO 10392")) {
            assertTrue(sources.stream().anyMatch(source -> source.contains(document)), document);
        }
        assertEquals(sources.stream().distinct().toList(), sources);
    }

    /** Nobody reads a figure of seventeen digits. */
    @Test
    void noFigureInAWorkingHasMoreDigitsThanAnybodyKnows() {
        WorkingsPart part = JobText.onFourCorners()
                .add("parts", "{ id: box, mass: 198 kg, mass-from: maker, position: { x: 1 m } }")
                .add("removed", "{ id: engine, mass: 1 kg, mass-from: maker, position: { x: 1 m } }")
                .dossier()
                .workings();
        var texts = Stream.concat(part.shared().stream(), part.pages().stream().flatMap(page -> page.steps().stream()))
                .map(step -> step.substituted() + " " + step.inputs() + " "
                        + step.result().large())
                .toList();
        assertTrue(texts.size() > 10, texts.size() + " steps");
        for (String text : texts) {
            assertFalse(text.matches("(?s).*\\.\\d{8}.*") && !text.contains("3.14159265"), text);
        }
    }
}
