package kerbfolio.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.job.Gate;
import org.junit.jupiter.api.Test;

class HandoverTest {
    private static Fact fact(JobText job, String label) {
        return job.dossier().handover().glance().stream()
                .filter(fact -> fact.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static String large(JobText job, String label) {
        return fact(job, label).value().large().replace('\u00a0', ' ');
    }

    @Test
    void eachFigureSaysHowItCameToBeKnown() {
        var job = JobText.onTwoAxles();
        assertEquals("814.0 ± 1.2 kg", large(job, "front axle as delivered"));
        assertEquals("measured", fact(job, "front axle as delivered").basis());
        assertEquals(
                "axle scales 7, 2026-09-30",
                fact(job, "front axle as delivered").origin());
        assertEquals("1600.0 ± 1.7 kg", large(job, "mass as delivered"));
        assertEquals("computed", fact(job, "mass as delivered").basis());
        // What a sum was computed from is who read its parts.
        assertEquals("axle scales 7, 2026-09-30", fact(job, "mass as delivered").origin());
        assertEquals("200.0 ± 2.4 kg", large(job, "change of mass"));
        assertEquals("1700 kg", large(job, "permitted gross mass"));
        assertEquals("stated", fact(job, "permitted gross mass").basis());
        assertEquals("plate", fact(job, "permitted gross mass").origin());
    }

    @Test
    void aSumOfPublishedFiguresIsNoBetterThanTheyAre() {
        var job = JobText.onTwoAxles()
                .without("weighings.as-received.instrument")
                .with("weighings.as-received.stated-by", "handbook");
        assertEquals("stated", fact(job, "mass as received").basis());
        assertEquals("handbook", fact(job, "mass as received").origin());
    }

    @Test
    void whatNobodyRecordedTakesNoLine() {
        assertEquals(List.of(), JobText.blank().dossier().handover().glance());
    }

    @Test
    void tyresStandWithSizeAndPressure() {
        var job = JobText.onTwoAxles().with("vehicle.tyres.front", "{ size: 165 R13, pressure: 2.2 bar }");
        assertEquals("165 R13 at 2.2 bar", large(job, "front tyres"));
        assertTrue(job.dossier().handover().glance().stream()
                .noneMatch(fact -> fact.label().equals("rear tyres")));
    }

    private static Handover withItem(String item) {
        return JobText.blank().add("punch-list", item).dossier().handover();
    }

    @Test
    void anOpenItemStandsInTheOpenList() {
        var line = withItem(
                        "{ id: \"3\", text: hose rubs, holds: energise, owner: shop, due: 2026-11-01, note: left side }")
                .open()
                .get(0);
        assertEquals(
                new Handover.PunchLine(
                        "3", "hose rubs", "\u2014", "energise", "shop", "\u2014", "2026-11-01", "left side", ""),
                line);
    }

    @Test
    void aClosedItemSaysByWhomAndOnWhatEvidence() {
        var handover = withItem("{ id: \"3\", text: hose rubs, holds: energise, closed: { by: A. Tester, date:"
                + " 2026-09-30, reading: 20 mm clear } }");
        assertEquals(List.of(), handover.open());
        assertEquals(
                "A. Tester, 2026-09-30, 20 mm clear", handover.closed().get(0).closing());
    }

    @Test
    void anItemClosedWithoutEvidenceStaysOpenAndSaysWhy() {
        var handover = withItem("{ id: \"3\", text: hose rubs, holds: energise, closed: { date: 2026-09-30 } }");
        assertEquals(List.of(), handover.closed());
        String closing = handover.open().get(0).closing();
        assertTrue(closing.startsWith("nobody is named, 2026-09-30, still open"), closing);
    }

    @Test
    void whatSomebodyAnswersForIsListedByName() {
        var handover = JobText.onTwoAxles()
                .add("waivers", "{ finding: gross-margin/as-delivered, by: B. Reader, reason: trailer only }")
                .add("not-applicable", "{ check: tyre-speed, by: C. Holder, date: 2026-09-01, reason: solid tyres }")
                .dossier()
                .handover();
        assertEquals(
                List.of(new Handover.NamedLine("gross-margin/as-delivered", "B. Reader", "\u2014", "trailer only")),
                handover.waivers());
        assertEquals(
                List.of(new Handover.NamedLine("tyre-speed", "C. Holder", "2026-09-01", "solid tyres")),
                handover.notApplicable());
    }

    @Test
    void aFindingThatHoldsStandsWithItsFigureAndLimit() {
        var figures = JobText.onTwoAxles()
                .with("weighings.as-delivered.axles.front", "860 kg")
                .dossier()
                .handover()
                .figures();
        assertEquals(
                "\u221210.0 ± 1.2 kg, at least 0 kg",
                String.valueOf(figures.get("axle-margin/front-axle-as-delivered"))
                        .replace('\u00a0', ' '));
        assertTrue(!figures.containsKey("axle-margin/rear-axle-as-delivered"), figures.toString());
    }

    /** By hand: tracks of 1400 and 1440 mm, height 700.72 mm (see the test of the check), 1.0132. */
    @Test
    void whatIsNotMetAndHoldsNoGateIsSaidAside() {
        var job = JobText.onTwoAxles()
                .with(
                        "weighings.tilt",
                        "{ date: 2026-09-30, instrument: pads, length-instrument: tape, loaded-radius:"
                                + " { front: 300 mm, rear: 300 mm }, steps: [{ rise: 500 mm, front-axle: 866.35 kg ± 0.1 kg }] }");
        var asides = job.dossier().handover().asides();
        assertEquals(1, asides.size());
        assertTrue(asides.get(0).contains("not met, 1.0"), asides.toString());
        assertEquals(List.of(), JobText.onTwoAxles().dossier().handover().asides());
    }

    @Test
    void theFourGatesStandInTheirOrder() {
        assertEquals(
                List.of(Gate.values()),
                JobText.blank().dossier().handover().gates().stream()
                        .map(report -> report.gate())
                        .toList());
        assertTrue(!JobText.blank().dossier().handover().next().isEmpty());
    }
}
