package kerbfolio.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import kerbfolio.JobText;
import kerbfolio.TractionText;
import org.junit.jupiter.api.Test;

class LocationPlanTest {
    /** The sound job with places across and heights, and one cable of which the route is written. */
    static JobText placed() {
        return place(
                        TractionText.sound(),
                        "front-box",
                        "200 mm",
                        "0 mm",
                        "600 mm",
                        "rear-box",
                        "2600 mm",
                        "100 mm",
                        "450 mm",
                        "disconnect",
                        "1900 mm",
                        "350 mm",
                        "400 mm",
                        "junction-box",
                        "600 mm",
                        "-300 mm",
                        "700 mm",
                        "inverter",
                        "100 mm",
                        "250 mm",
                        "750 mm",
                        "charger",
                        "300 mm",
                        "400 mm",
                        "650 mm")
                .alter(
                        "links",
                        "c-minus",
                        "place: underfloor }",
                        "place: underfloor, route: [ { x: 2300 mm, y: 300 mm, z: 250 mm }, { x: 700 mm, y: -300 mm, z: 250 mm } ] }")
                .add(
                        "parts",
                        "{ id: comp, name: compressor, role: compressor, position: { zone: beside the gearbox } }")
                .add("parts", "{ id: iso, name: isolation monitor, role: isolation-monitor }");
    }

    private static JobText place(JobText job, String... figures) {
        for (int i = 0; i < figures.length; i += 4) {
            job.alter(
                    "parts",
                    figures[i],
                    "position: { x: " + figures[i + 1] + " }",
                    "position: { x: " + figures[i + 1] + ", y: " + figures[i + 2] + ", z: " + figures[i + 3] + " }");
        }
        return job;
    }

    private static Figure plan(JobText job) {
        return Drawn.figure(job.dossier(), "location-plan");
    }

    private static String said(JobText job) {
        return plan(job).alternative().replace('\u00a0', ' ');
    }

    @Test
    void everyPlaceIsSaidAsItWasWritten() {
        String said = said(placed());
        assertTrue(
                said.contains("4 junction box, x 600 mm, y \u2212300 mm, z 700 mm; in it: heater fuse, aux fuse"),
                said);
        assertTrue(said.contains("left seen from the driver's seat"), said);
    }

    @Test
    void whatHasNoPlaceIsListed() {
        String said = said(placed());
        assertTrue(said.contains("place known in words only: compressor, beside the gearbox."), said);
        assertTrue(said.contains("no place recorded: isolation monitor."), said);
    }

    @Test
    void aRouteThatIsWrittenIsToldFromAStraightLine() {
        String said = said(placed());
        assertTrue(said.contains("c-minus 70 mm², route recorded"), said);
        assertTrue(said.contains("c-mid-rear 70 mm², straight line, route not recorded"), said);
    }

    @Test
    void whereTheCircuitIsCutStandsOnTheDrawing() {
        assertEquals(
                2,
                Drawn.of(plan(placed())).texts().stream()
                        .filter("3 cut: service disconnect"::equals)
                        .count());
        assertTrue(plan(placed()).caption().contains("The circuit is cut at: service disconnect (3)."));
    }

    @Test
    void withoutHeightsThereIsNoSideView() {
        List<String> texts = Drawn.of(plan(TractionText.sound())).texts();
        assertTrue(texts.contains("from above") && !texts.contains("from its left side"), texts.toString());
        assertTrue(Drawn.of(plan(placed())).texts().contains("from its left side"));
    }

    @Test
    void theRightIsAboveTheLeft() {
        Plan plan = Plan.large(TractionText.sound().dossier(), 0);
        assertTrue(plan.across(0.4) < plan.across(-0.4));
        assertTrue(plan.along(0) < plan.along(2.5));
    }

    @Test
    void aCableWithAnEndNobodyPlacedIsListed() {
        JobText job = placed().add("links", "{ id: c-comp, kind: high-voltage, from: junction-box, to: comp }");
        assertTrue(said(job).contains("cables not drawn, an end has no place: c-comp."), said(job));
    }

    @Test
    void withoutPlacesThereIsNoDrawing() {
        assertTrue(Figures.of(CircuitDrawingTest.three().dossier()).stream()
                .noneMatch(figure -> figure.id().equals("location-plan")));
    }
}
